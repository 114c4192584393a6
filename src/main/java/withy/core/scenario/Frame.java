package withy.core.scenario;

import withy.core.geometry.Bearing;
import withy.core.geometry.Position;

/**
 * The frame in which a water is laid out before it is turned into place: ahead lies inland, or
 * along the coast; abeam to starboard of that.
 *
 * @param middle where ahead and abeam are 0
 * @param ahead the direction of the frame
 */
record Frame(Position middle, Bearing ahead) {
  Position place(double inland, double abeam) {
    return middle.moved(ahead, inland).moved(ahead.plus(90), abeam);
  }

  /** Metres ahead of the middle. */
  double inland(Position place) {
    double angle = StrictMath.toRadians(ahead.degrees());
    return (place.x() - middle.x()) * StrictMath.sin(angle)
        + (place.y() - middle.y()) * StrictMath.cos(angle);
  }

  /** Metres to starboard of the middle. */
  double abeam(Position place) {
    double angle = StrictMath.toRadians(ahead.degrees());
    return (place.x() - middle.x()) * StrictMath.cos(angle)
        - (place.y() - middle.y()) * StrictMath.sin(angle);
  }
}
