package withy.core.geometry;

/**
 * A place on the plane of a scenario.
 *
 * @param x metres east of the origin
 * @param y metres north of the origin
 */
public record Position(double x, double y) {
  /**
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public Position {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("position " + x + ", " + y + " is not finite");
    }
  }

  /** The place that lies at a bearing and a distance in metres from here. */
  public Position moved(Bearing bearing, double metres) {
    double angle = StrictMath.toRadians(bearing.degrees());
    return new Position(x + metres * StrictMath.sin(angle), y + metres * StrictMath.cos(angle));
  }

  /** The place at a share of the straight way to another: 0 is here, 1 is there. */
  public Position towards(Position other, double share) {
    return new Position(x + share * (other.x - x), y + share * (other.y - y));
  }

  /** This place in whole decimetres, as files write it. */
  public Position rounded() {
    return new Position(Math.rint(10 * x) / 10, Math.rint(10 * y) / 10);
  }

  /** Metres between two places. */
  public double distanceTo(Position other) {
    return StrictMath.hypot(other.x - x, other.y - y);
  }

  /** The direction from here to another place; north if they are the same. */
  public Bearing bearingTo(Position other) {
    return Bearing.of(StrictMath.toDegrees(StrictMath.atan2(other.x - x, other.y - y)));
  }
}
