package withy.core.item;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import withy.core.scenario.Scenario;

/**
 * What is asked about a scenario.
 *
 * @param seed with the index, all that the item was drawn from
 * @param concepts the first is the one that it measures
 * @param options in the order in which they are shown
 * @param key the value of the one option that is right
 * @param explanation the rule that decides, in plain words
 */
public record Item(
    Form form,
    long seed,
    int index,
    List<Concept> concepts,
    Scenario scenario,
    Message prompt,
    List<Option> options,
    String key,
    Message explanation) {
  /**
   * @throws IllegalArgumentException if options repeat, or the key is not the one without a belief
   */
  public Item {
    concepts = List.copyOf(concepts);
    options = List.copyOf(options);
    List<String> right = new ArrayList<>();
    LinkedHashSet<String> values = new LinkedHashSet<>();
    for (Option each : options) {
      values.add(each.value());
      if (each.misconception() == null) {
        right.add(each.value());
      }
    }
    if (concepts.isEmpty() || values.size() != options.size() || options.size() < 2) {
      throw new IllegalArgumentException("an item needs a concept and two distinct options");
    }
    if (!right.equals(List.of(key))) {
      throw new IllegalArgumentException("the key " + key + " is not the one right of " + right);
    }
  }

  /** The concept that the item measures. */
  public Concept measures() {
    return concepts.get(0);
  }

  /**
   * The option of a value.
   *
   * @throws IllegalArgumentException if the item offers no such option
   */
  public Option option(String value) {
    for (Option each : options) {
      if (each.value().equals(value)) {
        return each;
      }
    }
    throw new IllegalArgumentException("the item offers no option '" + value + "'");
  }
}
