package withy.core.hydrography;

import withy.core.Chance;
import withy.core.waterway.Keel;

/** The shapes of water that the blueprints name. */
final class Layouts {
  private Layouts() {}

  static Layout of(Blueprint blueprint, Chance chance, Keel keel, double tide) {
    return switch (blueprint) {
      case HARBOUR_ENTRANCE -> new HarbourLayout(chance, keel, tide);
      case RIVER -> new RiverLayout(chance, keel, tide);
      case ESTUARY -> new EstuaryLayout(chance, keel, tide);
      case FORK -> TwoChannels.parting(chance, keel, tide);
      case CONVERGING -> TwoChannels.meeting(chance, keel, tide);
      case OFFSHORE_SHOAL -> OffshoreLayout.shoal(chance, keel, tide);
      case ISOLATED_ROCK -> OffshoreLayout.rock(chance, keel, tide);
      case COASTAL_PASSAGE -> new CoastalLayout(chance, keel, tide);
      case NEIGHBOURING_CHANNELS -> TwoChannels.sideBySide(chance, keel, tide);
    };
  }
}
