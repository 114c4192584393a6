package withy.core.simulation;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of drills by one policy.
 *
 * @param lengths numbers of items, at each of which the following stand
 * @param recall share of what is not known that is found where one in ten of what is known is
 *     called unknown too
 * @param flagged share of what is not known that the project would list (chance of .80 or more)
 * @param precision share not known of what it would list; NaN where it lists nothing
 * @param named share of beliefs held that are what the statistics hold likeliest, knowing included
 * @param namedSurely share of beliefs held that have a chance of .60 or more, so that a page names
 *     them
 * @param mastered share of what was not known that is known by then, by learning
 * @param itemsToRecall items until the recall is .90; null where it is not reached
 * @param success share of right answers in the whole drill
 */
public record PolicyFigures(
    Policy policy,
    List<Integer> lengths,
    List<Double> recall,
    List<Double> flagged,
    List<Double> precision,
    List<Double> named,
    List<Double> namedSurely,
    List<Double> mastered,
    @Nullable Integer itemsToRecall,
    double success) {
  public PolicyFigures {
    lengths = List.copyOf(lengths);
    recall = List.copyOf(recall);
    flagged = List.copyOf(flagged);
    precision = List.copyOf(precision);
    named = List.copyOf(named);
    namedSurely = List.copyOf(namedSurely);
    mastered = List.copyOf(mastered);
  }
}
