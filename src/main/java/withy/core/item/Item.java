package withy.core.item;

import java.util.List;
import java.util.Optional;
import withy.core.scenario.Scenario;

/**
 * What is asked about a scenario.
 *
 * @param seed with the index, all that the item was drawn from
 * @param concepts the first is the one that it measures
 * @param answer how it is answered, and what is right
 * @param explanation the rule that decides, in plain words
 */
public record Item(
    Form form,
    long seed,
    int index,
    List<Concept> concepts,
    Scenario scenario,
    Message prompt,
    Answer answer,
    Message explanation) {
  /**
   * @throws IllegalArgumentException if it measures nothing
   */
  public Item {
    concepts = List.copyOf(concepts);
    if (concepts.isEmpty()) {
      throw new IllegalArgumentException("an item needs a concept");
    }
  }

  /** The concept that the item measures. */
  public Concept measures() {
    return concepts.get(0);
  }

  /** The right answer as one word: of a choice, the value of the option that is right. */
  public String key() {
    return answer.key();
  }

  /** The options in the order in which they are shown; none unless one of several is chosen. */
  public List<Option> options() {
    return answer instanceof Choice choice ? choice.options() : List.of();
  }

  /**
   * The option of a value.
   *
   * @throws IllegalArgumentException if the item offers no such option
   */
  public Option option(String value) {
    if (answer instanceof Choice choice) {
      return choice.option(value);
    }
    throw new IllegalArgumentException("the item offers no option '" + value + "'");
  }

  /**
   * The answer to which a belief leads, as one word; it may be right, and it may name another
   * belief that leads there too. Empty where the belief says nothing of the item.
   */
  public Optional<String> led(Misconception belief) {
    return answer instanceof Choice
        ? belief.answer(form, scenario).filter(answer::accepts)
        : answer.led(belief);
  }
}
