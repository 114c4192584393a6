package withy.core.geometry;

/**
 * The plane of a few kilometres of water: metres east and north of an origin, by the radii of
 * curvature of WGS 84 (semi-major axis 6,378,137 m, flattening 1/298.257223563; NGA.STND.0036) at
 * the origin's latitude. Five kilometres off, at 60°, a place is out by less than 10 m.
 */
public final class LocalPlane {
  private static final double SEMI_MAJOR = 6_378_137;
  private static final double FLATTENING = 1 / 298.257223563;
  private static final double ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);

  private final Geodetic origin;
  private final double metresPerLatitude;
  private final double metresPerLongitude;

  private LocalPlane(Geodetic origin) {
    double angle = StrictMath.toRadians(origin.latitude());
    double sine = StrictMath.sin(angle);
    double root = StrictMath.sqrt(1 - ECCENTRICITY_SQUARED * sine * sine);
    double meridian = SEMI_MAJOR * (1 - ECCENTRICITY_SQUARED) / (root * root * root);
    double normal = SEMI_MAJOR / root;
    this.origin = origin;
    this.metresPerLatitude = StrictMath.toRadians(meridian);
    this.metresPerLongitude = StrictMath.toRadians(normal * StrictMath.cos(angle));
  }

  /** The plane that touches the earth at an origin. */
  public static LocalPlane at(Geodetic origin) {
    return new LocalPlane(origin);
  }

  /** Metres that a degree of latitude is long here. */
  public double metresPerLatitude() {
    return metresPerLatitude;
  }

  /** Metres that a degree of longitude is long here. */
  public double metresPerLongitude() {
    return metresPerLongitude;
  }

  /** Where a place lies on the plane. */
  public Position position(Geodetic place) {
    return new Position(
        (place.longitude() - origin.longitude()) * metresPerLongitude,
        (place.latitude() - origin.latitude()) * metresPerLatitude);
  }

  /** The place on the earth of one on the plane. */
  public Geodetic place(Position position) {
    return new Geodetic(
        origin.latitude() + position.y() / metresPerLatitude,
        origin.longitude() + position.x() / metresPerLongitude);
  }
}
