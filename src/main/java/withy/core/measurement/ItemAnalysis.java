package withy.core.measurement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.response.Response;

/**
 * Facility and discrimination of each form of item.
 *
 * <p>Every learner meets other items, so the form takes the place of the item. Over the answers to
 * a form, r = cov(u, w) / (sd u · sd w), with u = 1 for a right answer and 0 for a wrong one, and w
 * the share of right ones among all other answers of the same learner. Where each learner answers
 * each form once, as on paper, this is the corrected point-biserial coefficient of the item.
 */
final class ItemAnalysis {
  private final Map<String, Tally> learners = new LinkedHashMap<>();
  private final Map<String, List<Response>> forms = new TreeMap<>();

  private ItemAnalysis(List<Response> answers) {
    for (Response answer : answers) {
      learners.merge(
          answer.learner(),
          Tally.first(answer.correct()),
          (known, first) -> known.plus(answer.correct()));
      forms.computeIfAbsent(answer.form(), form -> new ArrayList<>()).add(answer);
    }
  }

  /** The analysis of first answers, a form each, by the name of the form. */
  static List<FormAnalysis> of(List<Response> answers) {
    ItemAnalysis analysis = new ItemAnalysis(answers);
    List<FormAnalysis> result = new ArrayList<>();
    analysis.forms.forEach((form, given) -> result.add(analysis.analyse(form, given)));
    return List.copyOf(result);
  }

  private FormAnalysis analyse(String form, List<Response> given) {
    long right = given.stream().filter(Response::correct).count();
    double facility = (double) right / given.size();
    return new FormAnalysis(form, given.size(), facility, discrimination(given));
  }

  private @Nullable Double discrimination(List<Response> given) {
    PointBiserial against = new PointBiserial();
    Set<String> seen = new LinkedHashSet<>();
    for (Response answer : given) {
      Tally all = learners.getOrDefault(answer.learner(), Tally.first(answer.correct()));
      if (all.answers() > 1) {
        against.add(answer.correct(), elsewhere(all, answer.correct()));
        seen.add(answer.learner());
      }
    }
    double coefficient =
        seen.size() < FormAnalysis.FEWEST_LEARNERS ? Double.NaN : against.coefficient();
    return Double.isNaN(coefficient) ? null : coefficient;
  }

  private static double elsewhere(Tally all, boolean correct) {
    int right = all.answers() - all.errors() - (correct ? 1 : 0);
    return (double) right / (all.answers() - 1);
  }
}
