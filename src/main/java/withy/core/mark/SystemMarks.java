package withy.core.mark;

import static withy.core.mark.BodyShape.BARREL;
import static withy.core.mark.BodyShape.CAN;
import static withy.core.mark.BodyShape.CONICAL;
import static withy.core.mark.BodyShape.PILLAR;
import static withy.core.mark.BodyShape.SPAR;
import static withy.core.mark.BodyShape.SPHERICAL;
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

/**
 * The marks of the Maritime Buoyage System. Colours, patterns, shapes and topmarks: IHO S-57
 * Appendix B.1 Annex A, edition 4.1.0, table 12.1 and 12.4.1.1. Retroreflectors: the comprehensive
 * code of R1001, from memory.
 */
final class SystemMarks {
  private final Customs customs;
  private final Colour port;
  private final Colour starboard;

  private SystemMarks(Customs customs) {
    this.customs = customs;
    this.port = customs.region().portHand();
    this.starboard = customs.region().starboardHand();
  }

  /** The floating marks with the customs of a practice, then leading marks and beacons. */
  static List<MarkDescription> of(Customs customs) {
    List<MarkDescription> marks = new ArrayList<>(floating(customs));
    marks.addAll(LeadingMarks.of(customs));
    marks.addAll(Beacons.of(marks));
    if (customs.region() == Region.A) {
      marks.addAll(Withies.of(customs.region()));
    }
    return List.copyOf(marks);
  }

  /** The floating marks of lateral, cardinal and all other classes of the system. */
  static List<MarkDescription> floating(Customs customs) {
    SystemMarks marks = new SystemMarks(customs);
    return List.of(
        marks.portHand(),
        marks.starboardHand(),
        marks.preferredChannelToStarboard(),
        marks.preferredChannelToPort(),
        marks.cardinal(Quadrant.NORTH, TopmarkShape.TWO_CONES_UP, BLACK, YELLOW),
        marks.cardinal(Quadrant.EAST, TopmarkShape.TWO_CONES_BASE_TO_BASE, BLACK, YELLOW, BLACK),
        marks.cardinal(Quadrant.SOUTH, TopmarkShape.TWO_CONES_DOWN, YELLOW, BLACK),
        marks.cardinal(Quadrant.WEST, TopmarkShape.TWO_CONES_POINT_TO_POINT, YELLOW, BLACK, YELLOW),
        marks.isolatedDanger(),
        marks.safeWater(),
        marks.special(),
        marks.emergencyWreck());
  }

  private MarkDescription portHand() {
    return lateral(MarkKind.PORT_HAND, port, CAN, TopmarkShape.CAN)
        .asks(Passing.LEAVE_TO_PORT, Demand.KEEP_TO_ITS_SIDE)
        .build();
  }

  private MarkDescription starboardHand() {
    return lateral(MarkKind.STARBOARD_HAND, starboard, CONICAL, TopmarkShape.CONE_UP)
        .asks(Passing.LEAVE_TO_STARBOARD, Demand.KEEP_TO_ITS_SIDE)
        .build();
  }

  private MarkDescription.Builder lateral(
      MarkKind kind, Colour colour, BodyShape body, TopmarkShape topmark) {
    return handed(mark(kind, MarkGroup.LATERAL), colour, body, topmark)
        .painted(PLAIN, colour)
        .lights(customs.lateralLimit(colour), customs.lateral(colour))
        .numbering(Numbering.NUMBERED)
        .toldBy(
            MarkRule.LATERAL_COLOUR_BY_REGION,
            MarkRule.LATERAL_COLOUR_BY_REGION,
            MarkRule.LATERAL_LIGHT)
        .laidDown(MarkRule.RED_EVEN_GREEN_ODD.clause());
  }

  private MarkDescription preferredChannelToStarboard() {
    return preferred(MarkKind.PREFERRED_CHANNEL_TO_STARBOARD, port, starboard, CAN)
        .asks(Passing.PREFERRED_TO_PORT, Demand.CHOOSE_CHANNEL)
        .build();
  }

  private MarkDescription preferredChannelToPort() {
    return preferred(MarkKind.PREFERRED_CHANNEL_TO_PORT, starboard, port, CONICAL)
        .asks(Passing.PREFERRED_TO_STARBOARD, Demand.CHOOSE_CHANNEL)
        .build();
  }

  private MarkDescription.Builder preferred(
      MarkKind kind, Colour body, Colour band, BodyShape shape) {
    TopmarkShape topmark = shape == CAN ? TopmarkShape.CAN : TopmarkShape.CONE_UP;
    return handed(mark(kind, MarkGroup.PREFERRED_CHANNEL), body, shape, topmark)
        .painted(HORIZONTAL, body, band, body)
        .lights(LightRules.preferredChannel(body), customs.preferred(body))
        .numbering(Numbering.LETTERED)
        .toldBy(
            MarkRule.PREFERRED_CHANNEL_BODY_COLOUR,
            MarkRule.PREFERRED_CHANNEL_BODY_COLOUR,
            MarkRule.PREFERRED_CHANNEL_LIGHT)
        .laidDown(
            MarkRule.PREFERRED_CHANNEL_ONE_BAND.clause(),
            MarkRule.SECONDARY_CHANNEL_OPPOSITE.clause());
  }

  /** Body and topmark of a hand; only the topmark gives a pillar or spar its shape. */
  private MarkDescription.Builder handed(
      MarkDescription.Builder mark, Colour colour, BodyShape body, TopmarkShape topmark) {
    mark.bodies(bodies(body, PILLAR, SPAR)).retroreflectors(colour);
    List<BodyShape> needing = customs.handTopmarksNeeded() ? bodies(PILLAR, SPAR) : List.of();
    return customs.handTopmarks() ? mark.topmark(Topmark.of(topmark, colour), needing) : mark;
  }

  private MarkDescription cardinal(Quadrant quadrant, TopmarkShape cones, Colour... bands) {
    return mark(MarkKind.cardinal(quadrant), MarkGroup.CARDINAL)
        .painted(HORIZONTAL, bands)
        .bodies(bodies(PILLAR, SPAR))
        .topmark(Topmark.of(cones, BLACK), bodies(PILLAR, SPAR))
        .lights(LightRules.cardinal(quadrant), cardinalLights(quadrant))
        .retroreflectors(cardinalSheeting(quadrant))
        .asks(Passing.NAMED_SIDE, Demand.PASS_NAMED_SIDE)
        .numbering(Numbering.LETTERED)
        .toldBy(MarkRule.CARDINAL_COLOURS, MarkRule.CARDINAL_TOPMARKS, MarkRule.CARDINAL_LIGHTS)
        .laidDown(MarkRule.CARDINAL_PASS_NAMED_SIDE.clause())
        .build();
  }

  private static List<String> cardinalLights(Quadrant quadrant) {
    return switch (quadrant) {
      case NORTH -> List.of("Q W", "VQ W");
      case EAST -> List.of("Q(3) W 10s", "VQ(3) W 5s");
      case SOUTH -> List.of("Q(6)+LFl W 15s", "VQ(6)+LFl W 10s");
      case WEST -> List.of("Q(9) W 15s", "VQ(9) W 10s");
    };
  }

  private static Colour[] cardinalSheeting(Quadrant quadrant) {
    return switch (quadrant) {
      case NORTH -> new Colour[] {BLUE, YELLOW};
      case EAST -> new Colour[] {BLUE, BLUE};
      case SOUTH -> new Colour[] {YELLOW, BLUE};
      case WEST -> new Colour[] {YELLOW, YELLOW};
    };
  }

  private MarkDescription isolatedDanger() {
    return mark(MarkKind.ISOLATED_DANGER, MarkGroup.ISOLATED_DANGER)
        .painted(HORIZONTAL, BLACK, RED, BLACK)
        .bodies(bodies(PILLAR, SPAR))
        .topmark(Topmark.of(TopmarkShape.TWO_SPHERES, BLACK), bodies(PILLAR, SPAR))
        .lights(LightRules.isolatedDanger(), customs.isolatedDanger())
        .retroreflectors(BLUE, RED)
        .asks(Passing.EITHER_SIDE, Demand.STAND_OFF)
        .numbering(Numbering.LETTERED)
        .toldBy(
            MarkRule.ISOLATED_DANGER_LOOK,
            MarkRule.ISOLATED_DANGER_LOOK,
            MarkRule.ISOLATED_DANGER_LIGHT)
        .laidDown(MarkRule.ISOLATED_DANGER_WATER_ALL_ROUND.clause())
        .build();
  }

  private MarkDescription safeWater() {
    return mark(MarkKind.SAFE_WATER, MarkGroup.SAFE_WATER)
        .painted(VERTICAL, RED, WHITE)
        .bodies(bodies(SPHERICAL, PILLAR, SPAR))
        .topmark(Topmark.of(TopmarkShape.SPHERE, RED), bodies(PILLAR, SPAR))
        .lights(customs.safeWaterLight(), customs.safeWater())
        .retroreflectors(RED, WHITE)
        .asks(customs.safeWaterPassing(), Demand.GO_EITHER_SIDE)
        .numbering(Numbering.LETTERED)
        .toldBy(MarkRule.SAFE_WATER_LOOK, MarkRule.SAFE_WATER_LOOK, MarkRule.SAFE_WATER_LIGHT)
        .laidDown(safeWaterRule().clause())
        .build();
  }

  private MarkRule safeWaterRule() {
    return customs.safeWaterPassing() == Passing.ALWAYS_TO_PORT
        ? MarkRule.SAFE_WATER_KEPT_TO_PORT
        : MarkRule.SAFE_WATER_EITHER_SIDE;
  }

  /** The X of a special mark is optional (TP 968). */
  private MarkDescription special() {
    MarkDescription.Builder special =
        mark(MarkKind.SPECIAL, MarkGroup.SPECIAL)
            .painted(PLAIN, YELLOW)
            .bodies(PILLAR, SPAR, BARREL)
            .lights(LightRules.special(), customs.special())
            .retroreflectors(YELLOW)
            .asks(Passing.UNTOLD, Demand.READ_CHART)
            .numbering(Numbering.LETTERED)
            .toldBy(MarkRule.SPECIAL_LOOK, MarkRule.SPECIAL_LOOK, MarkRule.SPECIAL_LIGHT)
            .laidDown(MarkRule.SPECIAL_NO_SIDE.clause());
    return customs.specialTopmark()
        ? special.topmark(Topmark.of(TopmarkShape.X, YELLOW), List.of()).build()
        : special.build();
  }

  private MarkDescription emergencyWreck() {
    return mark(MarkKind.EMERGENCY_WRECK, MarkGroup.NEW_DANGER)
        .painted(VERTICAL, BLUE, YELLOW)
        .bodies(bodies(PILLAR, SPAR))
        .topmark(Topmark.of(TopmarkShape.UPRIGHT_CROSS, YELLOW), bodies(PILLAR, SPAR))
        .lights(LightRules.wreck(), List.of("Al.Oc BuY 3s"))
        .asks(Passing.KEEP_CLEAR, Demand.KEEP_CLEAR_OF_WRECK)
        .toldBy(MarkRule.WRECK_LOOK, MarkRule.WRECK_LOOK, MarkRule.WRECK_LIGHT)
        .laidDown(MarkRule.WRECK_KEEP_CLEAR.clause())
        .build();
  }

  private MarkDescription.Builder mark(MarkKind kind, MarkGroup group) {
    return MarkDescription.of(kind, group).words(customs.names() + kind.id(), "mark." + kind.id());
  }

  private List<BodyShape> bodies(BodyShape... shapes) {
    List<BodyShape> bodies = new ArrayList<>(List.of(shapes));
    if (!customs.spars()) {
      bodies.remove(SPAR);
    }
    return bodies;
  }
}
