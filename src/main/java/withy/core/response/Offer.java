package withy.core.response;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.item.Passage;

/**
 * What an item lets a learner choose from, with every misconception of the concept measured that
 * leads to a wrong option: several often lead to the same one, of which the item names one.
 */
public final class Offer {
  private Offer() {}

  /**
   * The options; empty where the answer is a number or a mark put together. Of a passage these are
   * the answers to which beliefs lead, since who holds one of them would have given its sides, and
   * the one given.
   *
   * @param given the answer; null for "not sure" or before there is one
   */
  public static List<OfferedOption> of(Item item, @Nullable String given) {
    if (item.answer() instanceof Passage) {
      Set<String> words = new LinkedHashSet<>(item.answer().foreseen());
      if (given != null) {
        words.add(given);
      }
      return offered(item, List.copyOf(words));
    }
    return offered(item, item.options().stream().map(each -> each.value()).toList());
  }

  private static List<OfferedOption> offered(Item item, List<String> words) {
    Map<String, List<String>> led = led(item);
    List<OfferedOption> offered = new ArrayList<>();
    for (String word : words) {
      offered.add(offered(item, word, led.getOrDefault(word, List.of())));
    }
    return List.copyOf(offered);
  }

  private static OfferedOption offered(Item item, String word, List<String> led) {
    if (word.equals(item.key())) {
      return new OfferedOption(word, null);
    }
    Misconception belief = item.answer().grade(word).misconception();
    String named = belief == null ? OfferedOption.UNEXPLAINED : belief.id();
    return new OfferedOption(
        word, named, led.stream().filter(each -> !each.equals(named)).toList());
  }

  /** Which beliefs about what the item measures lead to which answer. */
  private static Map<String, List<String>> led(Item item) {
    Map<String, List<String>> led = new LinkedHashMap<>();
    for (Misconception each : Misconception.about(item.measures())) {
      item.led(each)
          .ifPresent(word -> led.computeIfAbsent(word, w -> new ArrayList<>()).add(each.id()));
    }
    return led;
  }
}
