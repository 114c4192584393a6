package withy.core.scenario;

import java.util.List;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/** Draws stretches of water from chance: the same chance draws the same water on any machine. */
public final class WaterGenerator {
  private WaterGenerator() {}

  /**
   * A water of the kind of a blueprint, marked as a practice marks it, in which a keel grounds
   * wherever it leaves a lateral mark on the wrong side.
   */
  public static Waterway water(Practice practice, Blueprint blueprint, Keel keel, Chance chance) {
    double tide = chance.below(13) / 10.0;
    Seabed seabed = Layouts.of(blueprint, chance, keel, tide);
    Waterway bare =
        new Waterway(seabed.depths(), tide, seabed.fairways(), seabed.dangers(), List.of());
    return new Waterway(
        bare.depths(),
        tide,
        bare.fairways(),
        bare.dangers(),
        Marking.of(practice, bare, keel, chance));
  }
}
