package withy.core.hydrography;

import withy.core.geometry.Bearing;
import withy.core.geometry.Position;

/**
 * The frame in which a water is laid out before it is turned into place: ahead lies inland, or
 * along the coast; abeam to starboard of that.
 */
final class Frame {
  private final Position middle;
  private final double sine;
  private final double cosine;

  /**
   * A frame.
   *
   * @param middle where ahead and abeam are 0
   * @param ahead the direction of the frame
   */
  Frame(Position middle, Bearing ahead) {
    double angle = StrictMath.toRadians(ahead.degrees());
    this.middle = middle;
    this.sine = StrictMath.sin(angle);
    this.cosine = StrictMath.cos(angle);
  }

  Position place(double inland, double abeam) {
    return new Position(
        middle.x() + inland * sine + abeam * cosine, middle.y() + inland * cosine - abeam * sine);
  }

  /** Metres ahead of the middle. */
  double inland(Position place) {
    return (place.x() - middle.x()) * sine + (place.y() - middle.y()) * cosine;
  }

  /** Metres to starboard of the middle. */
  double abeam(Position place) {
    return (place.x() - middle.x()) * cosine - (place.y() - middle.y()) * sine;
  }
}
