package withy.core.simulation;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Item;
import withy.core.item.Misconception;
import withy.core.response.Offer;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * An item with a choice, as it is put to planted learners.
 *
 * @param offered its options, with all beliefs that lead to each
 * @param led where each belief about what it measures leads, by its name; the key among them
 */
record Posed(Item item, List<OfferedOption> offered, Map<String, String> led) {
  private static final long SHOWN_MILLIS = 8000;

  static Posed of(Item item) {
    Map<String, String> led = new TreeMap<>();
    for (Misconception each : Misconception.about(item.measures())) {
      item.led(each).ifPresent(word -> led.put(each.id(), word));
    }
    return new Posed(item, Offer.of(item, null), led);
  }

  /** The beliefs that lead to a wrong option, and whether each is alone in that. */
  Map<String, Boolean> wrong() {
    Map<String, Boolean> wrong = new LinkedHashMap<>();
    led.forEach(
        (belief, word) -> {
          if (!word.equals(item.key())) {
            wrong.put(belief, led.values().stream().filter(word::equals).count() == 1);
          }
        });
    return wrong;
  }

  /** The response of a learner who gives an answer, as the server would keep it. */
  Response answered(String learner, int number, String given) {
    @Nullable Misconception named = item.answer().grade(given).misconception();
    return new Response(
        learner,
        "drill",
        "item-" + number,
        item.form().id(),
        item.scenario().practice().id(),
        item.concepts().stream().map(Term::id).toList(),
        item.key(),
        given,
        named == null ? null : named.id(),
        offered,
        given.equals(item.key()),
        SHOWN_MILLIS,
        Instant.EPOCH.plusSeconds(number));
  }
}
