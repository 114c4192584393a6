package withy.core.scenario;

import java.util.Optional;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightSector;
import withy.core.light.SectoredLight;

/**
 * A light with sectors, and where the boat has it.
 *
 * @param bearing the true bearing of the light from the boat; of a limit, the bearing of the limit
 */
public record SectorLookout(
    LightCharacter light, SectoredLight sectors, Bearing bearing, SectorQuestion question)
    implements Lookout {
  /**
   * @throws IllegalArgumentException if a limit is asked for and the bearing is none of white and
   *     another colour
   */
  public SectorLookout {
    if (question == SectorQuestion.LIMIT && beyond(sectors, bearing).isEmpty()) {
      throw new IllegalArgumentException("the white sector does not end at " + bearing.degrees());
    }
  }

  /** What is seen of the light; empty where it is obscured. */
  public Optional<LightColour> seen() {
    return sectors.seenOn(bearing);
  }

  /**
   * The white sector.
   *
   * @throws IllegalStateException if there is none
   */
  public LightSector white() {
    return white(sectors)
        .orElseThrow(() -> new IllegalStateException("the light has no white sector"));
  }

  /**
   * The colour that white turns to at the limit asked for.
   *
   * @throws IllegalStateException if no limit is asked for
   */
  public LightColour beyond() {
    return beyond(sectors, bearing)
        .orElseThrow(() -> new IllegalStateException("no limit of the white sector"));
  }

  private static Optional<LightColour> beyond(SectoredLight sectors, Bearing limit) {
    for (LightSector each : sectors.sectors()) {
      if (each.colour() == LightColour.WHITE) {
        if (each.bearings().to().equals(limit)) {
          return sectors.seenOn(limit);
        }
        if (each.bearings().from().equals(limit)) {
          return endingAt(sectors, limit);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<LightColour> endingAt(SectoredLight sectors, Bearing limit) {
    return sectors.sectors().stream()
        .filter(each -> each.bearings().to().equals(limit))
        .map(LightSector::colour)
        .findFirst();
  }

  private static Optional<LightSector> white(SectoredLight sectors) {
    return sectors.sectors().stream()
        .filter(each -> each.colour() == LightColour.WHITE)
        .findFirst();
  }
}
