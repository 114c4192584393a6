package withy.core.geometry;

/**
 * A direction over the ground: degrees true, clockwise from north, 0 ≤ degrees &lt; 360.
 *
 * @param degrees degrees true
 */
public record Bearing(double degrees) implements Comparable<Bearing> {
  public static final Bearing NORTH = new Bearing(0);

  /**
   * @throws IllegalArgumentException if degrees is no number in [0, 360)
   */
  public Bearing {
    if (!(degrees >= 0 && degrees < 360)) {
      throw new IllegalArgumentException("bearing " + degrees + " is outside 0 ≤ b < 360");
    }
  }

  /** The bearing for any finite angle, turned into [0, 360). */
  public static Bearing of(double degrees) {
    double turned = degrees % 360;
    double positive = turned < 0 ? turned + 360 : turned;
    return new Bearing(positive >= 360 ? 0 : positive + 0.0);
  }

  /** This bearing turned clockwise by degrees (counter-clockwise if negative). */
  public Bearing plus(double turn) {
    return of(degrees + turn);
  }

  /** The opposite direction. */
  public Bearing reciprocal() {
    return plus(180);
  }

  /** The turn from this bearing clockwise to the other, in [0, 360). */
  public double clockwiseTo(Bearing other) {
    return other.plus(-degrees).degrees;
  }

  /** The smaller angle between two bearings, in [0, 180]. */
  public double angleTo(Bearing other) {
    double turn = clockwiseTo(other);
    return turn > 180 ? 360 - turn : turn;
  }

  /** This direction as seen over the bow: (-180, 180], negative to port. */
  public double relativeTo(Bearing heading) {
    double turn = heading.clockwiseTo(this);
    return turn > 180 ? turn - 360 : turn;
  }

  @Override
  public int compareTo(Bearing other) {
    return Double.compare(degrees, other.degrees);
  }
}
