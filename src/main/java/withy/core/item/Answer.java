package withy.core.item;

import java.util.List;
import java.util.Optional;
import withy.core.Chance;

/**
 * How an item is answered, what is right, and what each wrong answer tells of whoever gave it.
 *
 * <p>An answer that was given is one word without space and equals sign, as responses keep it: the
 * value of an option, a number in the item's unit, the parts of a mark or the sides of several ones
 * joined.
 */
public sealed interface Answer permits Choice, Quantity, Assembly, Passage {
  /** The right answer, as one word. */
  String key();

  /** Whether a word can be an answer to the item, right or wrong. */
  boolean accepts(String given);

  /**
   * What an answer tells.
   *
   * @throws IllegalArgumentException if the word can be no answer to the item
   */
  Grade grade(String given);

  /**
   * An answer as a person reads it.
   *
   * @throws IllegalArgumentException if the word can be no answer to the item
   */
  Message text(String given);

  /** The answer that names a belief, wherever it leads; empty where no answer does. */
  Optional<String> led(Misconception belief);

  /** The answers that are known beforehand: the right one and those to which beliefs lead. */
  List<String> foreseen();

  /** The same with what is offered in an order of chance. */
  Answer shuffled(Chance chance);
}
