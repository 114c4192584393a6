package withy.core.geometry;

/**
 * A place on the earth, on the ellipsoid of WGS 84.
 *
 * @param latitude degrees, north positive, -90 to 90
 * @param longitude degrees, east positive, -180 to 180
 */
public record Geodetic(double latitude, double longitude) {
  /**
   * @throws IllegalArgumentException if there is no such place
   */
  public Geodetic {
    if (!(Math.abs(latitude) <= 90) || !(Math.abs(longitude) <= 180)) {
      throw new IllegalArgumentException(latitude + ", " + longitude + " is no place on the earth");
    }
  }
}
