package withy.core.mark;

import static withy.core.mark.BodyShape.BARREL;
import static withy.core.mark.BodyShape.BEACON;
import static withy.core.mark.BodyShape.CAN;
import static withy.core.mark.BodyShape.CONICAL;
import static withy.core.mark.BodyShape.DAYBOARD;
import static withy.core.mark.BodyShape.PILLAR;
import static withy.core.mark.BodyShape.SPAR;
import static withy.core.mark.BodyShape.SPHERICAL;

import java.util.ArrayList;
import java.util.List;

/**
 * The shapes of buoys, IHO S-57 Appendix B.1 Annex A table 12.1; for the USA 33 CFR 62.25 to 62.31,
 * which name no spars.
 */
final class Bodies {
  private Bodies() {}

  static List<BodyShape> of(Practice practice, MarkKind kind) {
    List<BodyShape> bodies =
        new ArrayList<>(
            switch (kind) {
              case PORT_HAND, PREFERRED_CHANNEL_TO_STARBOARD -> List.of(CAN, PILLAR, SPAR);
              case STARBOARD_HAND, PREFERRED_CHANNEL_TO_PORT -> List.of(CONICAL, PILLAR, SPAR);
              case SAFE_WATER -> List.of(SPHERICAL, PILLAR, SPAR);
              case SPECIAL -> List.of(PILLAR, SPAR, BARREL);
              default -> List.of(PILLAR, SPAR);
            });
    if (practice == Practice.USA && kind != MarkKind.SPECIAL) {
      bodies.remove(SPAR);
    }
    return bodies;
  }

  /** Shapes that a practice does not list: beacons of the class, and special marks of any shape. */
  static boolean mayBeMet(MarkKind kind, BodyShape body) {
    return switch (kind) {
      case EMERGENCY_WRECK -> false;
      case SPECIAL -> body != DAYBOARD;
      default -> body == BEACON;
    };
  }
}
