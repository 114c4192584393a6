package withy.core.light;

import withy.core.geometry.Sector;

/**
 * One colour of a light that shows several.
 *
 * @param bearings the true bearings on which the light is seen in this colour, from seaward (IHO
 *     Chart 1, section P 40): of the light from the boat, not of the boat from the light
 */
public record LightSector(Sector bearings, LightColour colour) {
  /** A sector between two true bearings from seaward, clockwise. */
  public static LightSector of(double from, double to, LightColour colour) {
    return new LightSector(Sector.of(from, to), colour);
  }
}
