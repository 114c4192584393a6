package withy.core.mark;

import static withy.core.mark.Colour.BLACK;
import static withy.core.mark.Colour.BLUE;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;
import static withy.core.mark.Colour.YELLOW;
import static withy.core.mark.ColourPattern.HORIZONTAL;
import static withy.core.mark.ColourPattern.PLAIN;
import static withy.core.mark.ColourPattern.VERTICAL;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Colours and topmarks of the kinds of mark: IHO S-57 Appendix B.1 Annex A, edition 4.1.0, table
 * 12.1 and 12.4.1.1. Canada and the USA depart from it where the branch says so.
 */
final class Looks {
  private final Practice practice;
  private final MarkKind kind;

  private Looks(Practice practice, MarkKind kind) {
    this.practice = practice;
    this.kind = kind;
  }

  static MarkLook of(Practice practice, MarkKind kind) {
    return new Looks(practice, kind).look();
  }

  private MarkLook look() {
    Colour port = practice.region().portHand();
    Colour starboard = practice.region().starboardHand();
    return switch (kind) {
      case PORT_HAND -> look(PLAIN, List.of(port), TopmarkShape.CAN, port);
      case STARBOARD_HAND -> look(PLAIN, List.of(starboard), TopmarkShape.CONE_UP, starboard);
      case PREFERRED_CHANNEL_TO_STARBOARD ->
          look(HORIZONTAL, List.of(port, starboard, port), TopmarkShape.CAN, port);
      case PREFERRED_CHANNEL_TO_PORT ->
          look(HORIZONTAL, List.of(starboard, port, starboard), TopmarkShape.CONE_UP, starboard);
      case NORTH_CARDINAL -> cardinal(TopmarkShape.TWO_CONES_UP, BLACK, YELLOW);
      case EAST_CARDINAL -> cardinal(TopmarkShape.TWO_CONES_BASE_TO_BASE, BLACK, YELLOW, BLACK);
      case SOUTH_CARDINAL -> cardinal(TopmarkShape.TWO_CONES_DOWN, YELLOW, BLACK);
      case WEST_CARDINAL -> cardinal(TopmarkShape.TWO_CONES_POINT_TO_POINT, YELLOW, BLACK, YELLOW);
      case ISOLATED_DANGER ->
          look(HORIZONTAL, List.of(BLACK, RED, BLACK), TopmarkShape.TWO_SPHERES, BLACK);
      case SAFE_WATER -> look(VERTICAL, List.of(RED, WHITE), TopmarkShape.SPHERE, RED);
      case SPECIAL -> look(PLAIN, List.of(YELLOW), TopmarkShape.X, YELLOW);
      case EMERGENCY_WRECK ->
          look(VERTICAL, List.of(BLUE, YELLOW), TopmarkShape.UPRIGHT_CROSS, YELLOW);
    };
  }

  private MarkLook cardinal(TopmarkShape cones, Colour... bands) {
    return look(HORIZONTAL, List.of(bands), cones, BLACK);
  }

  private MarkLook look(
      ColourPattern pattern, List<Colour> colours, TopmarkShape shape, Colour topmarkColour) {
    List<BodyShape> bodies = Bodies.of(practice, kind);
    return new MarkLook(
        kind,
        bodies,
        pattern,
        colours,
        topmark(shape, topmarkColour),
        bodiesNeedingTopmark(bodies),
        Lights.of(practice, kind));
  }

  /** US lateral, preferred-channel and special marks carry none (from memory of 33 CFR 62). */
  private @Nullable Topmark topmark(TopmarkShape shape, Colour colour) {
    return practice == Practice.USA && (bearsHand() || kind == MarkKind.SPECIAL)
        ? null
        : Topmark.of(shape, colour);
  }

  /**
   * Where only the topmark gives a silhouette its meaning. The X of a special mark is optional (TP
   * 968); Canada leaves lateral topmarks optional as well.
   */
  private List<BodyShape> bodiesNeedingTopmark(List<BodyShape> bodies) {
    if (kind == MarkKind.SPECIAL || (bearsHand() && practice.region() == Region.B && national())) {
      return List.of();
    }
    List<BodyShape> needing = new ArrayList<>(bodies);
    needing.removeAll(List.of(BodyShape.CAN, BodyShape.CONICAL, BodyShape.SPHERICAL));
    return needing;
  }

  private boolean bearsHand() {
    return kind.isLateral() || kind.isPreferredChannel();
  }

  private boolean national() {
    return practice == Practice.CANADA || practice == Practice.USA;
  }
}
