package withy.core.item;

import withy.core.scenario.SightedMark;

/** Messages of items that are set in a stretch of water. */
final class WaterWords {
  private WaterWords() {}

  /** The mark that bears a ring on the chart: "the ringed mark 3". */
  static Message asked(SightedMark mark) {
    return mark.label() == null
        ? Message.of("asked.bare")
        : Message.of("asked.numbered", mark.label());
  }

  /** How little water there is on a track: "at least 0.4 m", or that its ground dries. */
  static Message least(Way way) {
    return way.leastDepth() < 0
        ? Message.of("least.dries")
        : Message.of("least.metres", Math.floor(way.leastDepth() * 10) / 10);
  }
}
