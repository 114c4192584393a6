package withy.core.hydrography;

import java.util.List;
import withy.core.Chance;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/**
 * A water before it is marked.
 *
 * @param heads of moles, on which marks stand
 * @param seed of the chance by which it is marked, the same for every practice
 */
record Bed(Waterway bare, List<Position> heads, long seed) {
  Bed {
    heads = List.copyOf(heads);
  }

  static Bed drawn(Blueprint blueprint, Keel keel, Chance chance) {
    long seed = chance.seed();
    double tide = chance.below(13) / 10.0;
    Seabed seabed = Layouts.of(blueprint, chance, keel, tide).seabed();
    return new Bed(seabed.water(tide), seabed.heads(), seed);
  }
}
