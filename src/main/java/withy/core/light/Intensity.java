package withy.core.light;

/**
 * The luminous intensity of a light at night, and by Allard's law how far it carries through the
 * air. Visibility is the meteorological one: the distance at which 5 % of the contrast is left.
 *
 * @param candela above 0
 */
public record Intensity(double candela) {
  /** The illuminance in lux at which the eye of a mariner just sees a light at night (IALA). */
  private static final double THRESHOLD = 2e-7;

  /** Square metres in a square nautical mile, 1852². */
  private static final double SQUARE_MILE = 3.43e6;

  /** The visibility in nautical miles that nominal ranges are stated for (Bowditch, chapter 4). */
  public static final double NOMINAL_VISIBILITY = 10;

  private static final double LOG_CONTRAST = StrictMath.log(0.05);

  /**
   * @throws IllegalArgumentException if it is not above 0
   */
  public Intensity {
    positive(candela, "an intensity");
  }

  /** The intensity of a light that is just seen at a distance, both in nautical miles. */
  public static Intensity justSeen(double distance, double visibility) {
    positive(distance, "a distance");
    positive(visibility, "a visibility");
    double lost = StrictMath.exp(-LOG_CONTRAST * distance / visibility);
    return new Intensity(SQUARE_MILE * THRESHOLD * distance * distance * lost);
  }

  /** The intensity of a light of a nominal range in nautical miles. */
  public static Intensity ofNominalRange(double miles) {
    return justSeen(miles, NOMINAL_VISIBILITY);
  }

  /** How far the light is seen in nautical miles in clear weather as lists of lights define it. */
  public double nominalRange() {
    return luminousRange(NOMINAL_VISIBILITY);
  }

  /**
   * How far the light carries in a visibility, both in nautical miles; the earth's curve is left
   * out.
   *
   * <p>With u the logarithm of the distance the law reads 2u + aeᵘ = b, convex and growing, so that
   * Newton's steps come down to the root from the range in a vacuum and never pass it.
   */
  public double luminousRange(double visibility) {
    positive(visibility, "a visibility");
    double a = -LOG_CONTRAST / visibility;
    double b = StrictMath.log(candela / (SQUARE_MILE * THRESHOLD));
    double before = Double.POSITIVE_INFINITY;
    double u = b / 2;
    while (u < before) {
      before = u;
      double absorbed = a * StrictMath.exp(u);
      u -= (2 * u + absorbed - b) / (2 + absorbed);
    }
    return StrictMath.exp(before);
  }

  private static void positive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(what + " is above 0: " + value);
    }
  }
}
