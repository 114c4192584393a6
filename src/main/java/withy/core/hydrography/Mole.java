package withy.core.hydrography;

import withy.core.geometry.Polyline;

/** A wall of stones in the water, from the land to its head. */
final class Mole implements Ground {
  /** Metres from the middle of the wall to where its stones end. */
  static final double FOOT = 34;

  private static final double CREST = -3.7;
  private static final double HALF = 12;
  private static final double SLOPE = 0.3;

  /** Metres beyond which no sea here is deeper than its slope. */
  private static final double FELT = 130;

  private final Course feet;

  Mole(Polyline line) {
    this.feet = new Course(line);
  }

  @Override
  public double depth(Spot spot) {
    if (!feet.mayBeWithin(FELT, spot.place())) {
      return Double.POSITIVE_INFINITY;
    }
    double off = feet.foot(spot.place()).distance();
    return CREST + SLOPE * Math.max(0, off - HALF);
  }
}
