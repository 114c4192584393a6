package withy.core.item;

import withy.core.scenario.Sailing;
import withy.core.scenario.SightedMark;

/** Messages of items that are set in a stretch of water. */
final class WaterWords {
  private WaterWords() {}

  /** The mark that is asked about, told from all others by its bearing: "mark 3, bearing 035°". */
  static Message asked(SightedMark mark) {
    return mark.label() == null
        ? Message.of("asked.bare", mark.bearing())
        : Message.of("asked.numbered", mark.label(), mark.bearing());
  }

  /** The tide that stands, the boat's draught and the water that she wants under the keel. */
  static Message keel(Sailing sailing) {
    return Message.of(
        "asked.keel", sailing.water().tide(), sailing.keel().draught(), sailing.keel().margin());
  }

  /** How little water there is on a track: "at least 0.4 m", or that its ground dries. */
  static Message least(Way way) {
    return way.leastDepth() < 0
        ? Message.of("least.dries")
        : Message.of("least.metres", Math.floor(way.leastDepth() * 10) / 10);
  }
}
