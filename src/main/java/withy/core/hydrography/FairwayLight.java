package withy.core.hydrography;

import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.geometry.Sector;
import withy.core.light.LightColour;
import withy.core.light.LightSector;
import withy.core.light.SectoredLight;
import withy.core.mark.Colour;
import withy.core.mark.Region;

/**
 * A sector light that leads in: white over the fairway, at its sides the colours of the lateral
 * marks there (IALA Maritime Buoyage System; the sectors change with the region as the marks do).
 */
public final class FairwayLight {
  private FairwayLight() {}

  /**
   * The sectors in the order of their bearings.
   *
   * <p>Who has the light on a greater bearing than the middle of the fairway stands to port of it:
   * heading north, west of the line and the light to the north-east.
   *
   * @param white the bearings of the white sector
   * @param side degrees of each coloured sector
   */
  public static SectoredLight of(Region region, Sector white, double side) {
    Bearing first = white.from().plus(-side);
    Bearing last = white.to().plus(side);
    return new SectoredLight(
        List.of(
            new LightSector(new Sector(first, white.from()), light(region.starboardHand())),
            new LightSector(white, LightColour.WHITE),
            new LightSector(new Sector(white.to(), last), light(region.portHand()))));
  }

  private static LightColour light(Colour lateral) {
    return lateral == Colour.RED ? LightColour.RED : LightColour.GREEN;
  }
}
