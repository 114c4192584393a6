package withy.core.measurement;

import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.response.Response;

/**
 * How learners do on all but the answers that are looked at: the score without the item itself, as
 * the corrected coefficient wants it.
 */
final class Elsewhere {
  private final SortedMap<String, Double> shares = new TreeMap<>();

  /**
   * The shares of right answers elsewhere.
   *
   * @param looked the answers that are left out, which are among the sums
   * @param all what the answers of each learner add up to
   */
  Elsewhere(List<Response> looked, Collection<LearnerSums> all) {
    SortedMap<String, Tally> own = new TreeMap<>();
    for (Response each : looked) {
      Tally before = own.get(each.learner());
      own.put(
          each.learner(), before == null ? Tally.of(each.correct()) : before.and(each.correct()));
    }
    for (LearnerSums each : all) {
      Tally left = own.get(each.learner());
      int others = left == null ? 0 : each.answers() - left.answers();
      if (left != null && others > 0) {
        int right = each.right() - (left.answers() - left.errors());
        shares.put(each.learner(), (double) right / others);
      }
    }
  }

  /** The share of a learner's other answers that are right; null where there is no other. */
  @Nullable Double of(String learner) {
    return shares.get(learner);
  }

  /** Of how many learners it is known. */
  int learners() {
    return shares.size();
  }
}
