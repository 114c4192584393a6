package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Facility and discrimination of each form of item.
 *
 * <p>Every learner meets other items, so the form takes the place of the item. Over the answers to
 * a form, r = cov(u, w) / (sd u · sd w), with u = 1 for a right answer and 0 for a wrong one, and w
 * the share of right ones among all other answers of the same learner. Where each learner answers
 * each form once, as on paper, this is the corrected point-biserial coefficient of the item.
 */
final class ItemAnalysis {
  private final SortedMap<String, FormSums> forms = new TreeMap<>();
  private final SortedMap<String, PointBiserial> against = new TreeMap<>();
  private final SortedMap<String, Integer> learners = new TreeMap<>();

  private ItemAnalysis() {}

  /** The analysis of a class, a form each, by the name of the form. */
  static List<FormAnalysis> of(Collection<LearnerSums> all) {
    ItemAnalysis analysis = new ItemAnalysis();
    all.forEach(
        learner -> learner.forms().forEach((form, sums) -> analysis.add(form, sums, learner)));
    List<FormAnalysis> result = new ArrayList<>();
    analysis.forms.forEach((form, sums) -> result.add(analysis.analysed(form, sums)));
    return List.copyOf(result);
  }

  private void add(String form, FormSums sums, LearnerSums all) {
    forms.merge(form, sums, FormSums::plus);
    if (all.answers() > 1) {
      double others = all.answers() - 1.0;
      PointBiserial pairs = against.computeIfAbsent(form, f -> new PointBiserial());
      pairs.add(true, (all.right() - 1) / others, sums.right());
      pairs.add(false, all.right() / others, sums.answers() - sums.right());
      learners.merge(form, 1, Integer::sum);
    }
  }

  private FormAnalysis analysed(String form, FormSums sums) {
    double facility = (double) sums.right() / sums.answers();
    return new FormAnalysis(form, sums.answers(), facility, discrimination(form));
  }

  private @Nullable Double discrimination(String form) {
    PointBiserial pairs = against.get(form);
    if (pairs == null || learners.getOrDefault(form, 0) < FormAnalysis.FEWEST_LEARNERS) {
      return null;
    }
    double coefficient = pairs.coefficient();
    return Double.isNaN(coefficient) ? null : coefficient;
  }
}
