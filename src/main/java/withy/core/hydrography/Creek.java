package withy.core.hydrography;

import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;

/** A creek that dries at low water, narrower and higher the farther it runs into the land. */
final class Creek {
  /** Metres over which its banks rise. */
  private static final double BANK = 34;

  private static final double RISE = 1.6;

  private final Course feet;
  private final double length;
  private final double width;
  private final double bed;

  /**
   * A creek.
   *
   * @param course from its mouth inland
   * @param width metres at its mouth
   * @param bed metres below datum at its mouth
   */
  Creek(Polyline course, double width, double bed) {
    this.feet = new Course(course);
    this.length = course.length();
    this.width = width;
    this.bed = bed;
  }

  double carved(Position place, double floor) {
    if (!feet.mayBeWithin(width / 2 + BANK, place)) {
      return floor;
    }
    Foot foot = feet.foot(place);
    double gone = foot.along() / length;
    double half = width / 2 * (1 - 0.75 * gone);
    double up = Unevenness.smooth((foot.distance() - half) / BANK);
    double here = bed - RISE * gone;
    return up >= 1 ? floor : Math.max(floor, here + (floor - here) * up);
  }
}
