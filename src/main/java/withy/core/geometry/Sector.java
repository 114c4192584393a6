package withy.core.geometry;

/**
 * The bearings from one limit clockwise to another, the first included, the second not; they may
 * run through north.
 */
public record Sector(Bearing from, Bearing to) {
  /**
   * @throws IllegalArgumentException if both limits are the same, which could mean nothing or all
   *     round
   */
  public Sector {
    if (from.equals(to)) {
      throw new IllegalArgumentException("a sector from " + from.degrees() + " to itself");
    }
  }

  /** The sector between two bearings in degrees true. */
  public static Sector of(double from, double to) {
    return new Sector(new Bearing(from), new Bearing(to));
  }

  /** Degrees from limit to limit, above 0 and below 360. */
  public double width() {
    return from.clockwiseTo(to);
  }

  /** The bearing half way between the limits. */
  public Bearing middle() {
    return from.plus(width() / 2);
  }

  public boolean contains(Bearing bearing) {
    return from.clockwiseTo(bearing) < width();
  }

  /** Whether some bearing lies in both; sectors that only meet at a limit do not overlap. */
  public boolean overlaps(Sector other) {
    return contains(other.from) || other.contains(from);
  }
}
