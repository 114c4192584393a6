package withy.core.measurement;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What is believed of one learner and one concept; the chances add up to 1.
 *
 * @param answers how many answers it rests on
 * @param knows chance that the learner knows it
 * @param misconceptions chance of each misconception of the concept, by its name
 * @param guesses chance that the learner guesses
 */
public record LearnerState(
    String learner,
    String concept,
    int answers,
    double knows,
    SortedMap<String, Double> misconceptions,
    double guesses) {
  private static final double NEEDS_HELP_FROM = 0.80;
  private static final double NAMED_FROM = 0.60;

  public LearnerState {
    misconceptions = Collections.unmodifiableSortedMap(new TreeMap<>(misconceptions));
  }

  static LearnerState of(
      String learner, String concept, int answers, List<String> misconceptions, double[] state) {
    SortedMap<String, Double> chances = new TreeMap<>();
    for (int i = 0; i < misconceptions.size(); i++) {
      chances.put(misconceptions.get(i), state[i + 1]);
    }
    return new LearnerState(learner, concept, answers, state[0], chances, state[state.length - 1]);
  }

  /** Whether the learner most likely does not know the concept. */
  public boolean needsHelp() {
    return 1 - knows >= NEEDS_HELP_FROM;
  }

  /** What most likely stands in place of knowing: the misconception, or null for guessing. */
  public @Nullable String likeliestInPlace() {
    @Nullable String likeliest = null;
    double most = guesses;
    for (Map.Entry<String, Double> each : misconceptions.entrySet()) {
      if (each.getValue() > most) {
        most = each.getValue();
        likeliest = each.getKey();
      }
    }
    return likeliest;
  }

  /** The misconception that is likelier than knowing and than guessing, or null. */
  public @Nullable String likelyBelief() {
    @Nullable String likeliest = likeliestInPlace();
    boolean likely = likeliest != null && misconceptions.getOrDefault(likeliest, 0.0) > knows;
    return likely ? likeliest : null;
  }

  /** The misconception that is likely enough to be named, or null. */
  public @Nullable String namedMisconception() {
    for (Map.Entry<String, Double> each : misconceptions.entrySet()) {
      if (each.getValue() >= NAMED_FROM) {
        return each.getKey();
      }
    }
    return null;
  }
}
