package withy.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Passage;
import withy.core.item.Way;
import withy.core.scenario.Sailing;
import withy.core.waterway.Keel;

/** What a person reads of a boat in a stretch of water: what she needs, and what becomes of her. */
final class SailedWords {
  private static final double DECIMETRES = 10;

  private final Wording wording;

  SailedWords(Wording wording) {
    this.wording = wording;
  }

  /** The tide that stands, and what the boat needs. */
  List<String> facts(Sailing sailing) {
    return List.of(
        wording.text("fact.tide", sailing.water().tide()),
        wording.text("fact.keel", sailing.keel().draught(), sailing.keel().margin()));
  }

  /**
   * What becomes of her on the safe track and, where another was chosen, on that one.
   *
   * @param chosen the value of the option chosen; null for "not sure"
   */
  List<String> sailed(Item item, Sailing sailing, @Nullable String chosen) {
    if (item.answer() instanceof Passage passage) {
      return passage(passage, sailing.keel(), chosen);
    }
    List<String> words = new ArrayList<>();
    way(item, item.key())
        .ifPresent(way -> words.add(wording.text("feedback.sailed.safe", metres(way))));
    if (chosen != null && !chosen.equals(item.key())) {
      way(item, chosen).ifPresent(way -> words.add(chosen(way, sailing.keel())));
    }
    return words;
  }

  /** The safe track, and what comes of the first mark that is left on the wrong side. */
  private List<String> passage(Passage passage, Keel keel, @Nullable String chosen) {
    List<String> words = new ArrayList<>();
    words.add(wording.text("feedback.sailed.safe", metres(passage.way())));
    if (chosen != null && !chosen.equals(passage.key())) {
      List<Option> sides = passage.options(chosen);
      int first = 0;
      while (sides.get(first).misconception() == null) {
        first++;
      }
      words.add(astray(first + 1, Objects.requireNonNull(sides.get(first).way()), keel));
    }
    return words;
  }

  private String astray(int mark, Way way, Keel keel) {
    if (way.leastDepth() < 0) {
      return wording.text("feedback.passage.dries", mark, keel.draught());
    }
    return keel.grounds(way.leastDepth())
        ? wording.text("feedback.passage.touches", mark, metres(way), keel.draught())
        : wording.text("feedback.passage.floats", mark, metres(way));
  }

  private String chosen(Way way, Keel keel) {
    if (way.leastDepth() < 0) {
      return wording.text("feedback.sailed.dries", keel.draught());
    }
    if (keel.grounds(way.leastDepth())) {
      return wording.text("feedback.sailed.touches", metres(way), keel.draught());
    }
    String why = way.fault() == null ? "floats" : way.fault().id();
    return wording.text("feedback.sailed." + why, metres(way));
  }

  private static Optional<Way> way(Item item, String value) {
    return item.options().stream()
        .filter(each -> each.value().equals(value))
        .findFirst()
        .map(Option::way);
  }

  /** Whole decimetres, never more than there are. */
  private static double metres(Way way) {
    return Math.floor(way.leastDepth() * DECIMETRES) / DECIMETRES;
  }
}
