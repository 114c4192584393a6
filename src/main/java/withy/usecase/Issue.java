package withy.usecase;

import java.time.Instant;
import java.util.List;
import withy.core.item.Concept;
import withy.core.mark.Practice;

/**
 * That an item was issued to a learner: all from which it can be drawn again.
 *
 * @param position of the item in the learner's drill, from 0
 * @param concept that the item measures
 * @param seed from which it was drawn, which no learner can guess
 * @param generatorVersion that drew it; another one may draw another item from the seed
 * @param choices what stands for the options, for the parts of each slot or the sides of each leg,
 *     in the order in which they are shown; none where a number is asked for
 */
public record Issue(
    String id,
    String learner,
    String assignment,
    int position,
    Practice practice,
    Concept concept,
    long seed,
    int index,
    int generatorVersion,
    List<Choice> choices,
    Instant issuedAt) {
  public Issue {
    choices = List.copyOf(choices);
  }

  /**
   * The token under which a learner's page shows the option of a value, or the part of a feature.
   */
  public record Choice(String token, String value) {}

  /** The token that stands for an option or a part. */
  String token(String value) {
    for (Choice each : choices) {
      if (each.value().equals(value)) {
        return each.token();
      }
    }
    throw new IllegalArgumentException("no option '" + value + "' was issued");
  }
}
