package withy.core.hydrography;

import withy.core.Chance;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.Passing;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;

/**
 * Lays the lateral marks of a fairway from its beginning: one where it bends, on the point of the
 * inner side, between bends now on one hand and now on the other; only where leaving the fairway is
 * felt by the keel.
 */
final class LateralMarks {
  /** Metres that lateral marks stand outside the edge, and that a keel goes astray beyond them. */
  private static final double OUTSIDE = 6;

  private static final double ASTRAY = 38;

  /** Metres before and behind a place over which a bend is looked for, and degrees that make it. */
  private static final double REACH = 110;

  private static final double BEND = 24;
  private static final double STEP = 20;

  private final Marking marking;
  private final Fairway fairway;
  private final Polyline line;
  private final Chance chance;

  LateralMarks(Marking marking, Fairway fairway, Chance chance) {
    this.marking = marking;
    this.fairway = fairway;
    this.line = fairway.line();
    this.chance = chance;
  }

  void lay() {
    boolean starboard = chance.oneIn(2);
    double along = chance.between(60, 120);
    while (along < line.length() - Marking.FROM_THE_RIM) {
      double turn = turn(along);
      boolean bent = Math.abs(turn) > BEND;
      boolean hand = bent ? turn > 0 : starboard;
      if (laid(along, hand) || laid(along, !hand)) {
        starboard = !marking.lastIsToStarboard(fairway);
        along += bent ? chance.between(190, 240) : chance.between(250, 340);
      } else {
        along += STEP;
      }
    }
  }

  /** Degrees by which the fairway turns there; to starboard if positive. */
  private double turn(double along) {
    return line.bearingAt(along + REACH).relativeTo(line.bearingAt(Math.max(0, along - REACH)));
  }

  private boolean laid(double along, boolean starboard) {
    double off = (fairway.width() / 2 + OUTSIDE) * (starboard ? 1 : -1);
    Position place = line.beside(along, off);
    Passing passing = starboard ? Passing.LEAVE_TO_STARBOARD : Passing.LEAVE_TO_PORT;
    return isEdge(along, off)
        && isOffOthers(place)
        && marking
            .passed(passing, false)
            .filter(mark -> marking.lateral(mark, place, fairway))
            .isPresent();
  }

  /** Whether the keel has its water inside a mark there, and grounds outside it. */
  private boolean isEdge(double along, double off) {
    double side = Math.signum(off);
    Keel keel = marking.keel();
    Position inside = line.beside(along, side * fairway.width() / 4);
    Position outside = line.beside(along, off + side * ASTRAY);
    return keel.isSafe(marking.water().water(inside))
        && keel.groundsSurely(marking.water().water(outside));
  }

  private boolean isOffOthers(Position place) {
    return marking.water().fairways().stream()
        .filter(each -> !each.equals(fairway))
        .allMatch(each -> each.line().foot(place).distance() >= each.width() / 2 + 2 * ASTRAY);
  }
}
