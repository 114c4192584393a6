package withy.core.light;

import java.util.List;
import java.util.Optional;
import withy.core.geometry.Bearing;

/**
 * A light whose colour depends on where it is seen from.
 *
 * @param sectors in the order in which a list of lights gives them; on all other bearings the light
 *     is obscured
 */
public record SectoredLight(List<LightSector> sectors) {
  /**
   * @throws IllegalArgumentException if there is no sector, or two overlap
   */
  public SectoredLight {
    sectors = List.copyOf(sectors);
    if (sectors.isEmpty()) {
      throw new IllegalArgumentException("a sectored light shows at least one colour");
    }
    for (int i = 0; i < sectors.size(); i++) {
      for (LightSector later : sectors.subList(i + 1, sectors.size())) {
        if (sectors.get(i).bearings().overlaps(later.bearings())) {
          throw new IllegalArgumentException(sectors.get(i) + " overlaps " + later);
        }
      }
    }
  }

  /** What a boat sees that takes this true bearing of the light; empty where it is obscured. */
  public Optional<LightColour> seenOn(Bearing bearing) {
    for (LightSector each : sectors) {
      if (each.bearings().contains(bearing)) {
        return Optional.of(each.colour());
      }
    }
    return Optional.empty();
  }
}
