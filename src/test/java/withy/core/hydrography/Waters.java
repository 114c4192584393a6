package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.mark.Practice;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/** Draws one water for several practices at once: they differ in their marks alone. */
final class Waters {
  private static final int DRAWS = 20;

  private Waters() {}

  /** What {@link WaterGenerator} draws for every practice from one seed, in their order. */
  static List<Waterway> of(Blueprint blueprint, long seed, Keel keel) {
    List<Optional<Waterway>> waters = new ArrayList<>();
    Practice.values().forEach(each -> waters.add(Optional.empty()));
    Chance chance = chance(blueprint, seed);
    for (int draw = 0; draw < DRAWS && waters.stream().anyMatch(Optional::isEmpty); draw++) {
      Bed bed = Bed.drawn(blueprint, keel, chance);
      for (int i = 0; i < waters.size(); i++) {
        Practice practice = Practice.values().get(i);
        waters.set(
            i, waters.get(i).or(() -> WaterGenerator.marked(practice, blueprint, keel, bed)));
      }
    }
    return waters.stream().map(Optional::orElseThrow).toList();
  }

  static Chance chance(Blueprint blueprint, long seed) {
    return Chance.of(seed, blueprint.ordinal());
  }
}
