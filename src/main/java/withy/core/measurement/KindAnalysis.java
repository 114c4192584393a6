package withy.core.measurement;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * How the items of one kind do: those of one form that measure one concept. Items are generated and
 * hardly ever come twice, so the kind takes the place of the item of a paper test. As in {@link
 * ItemAnalysis} each answer counts once, so who was asked more often weighs more; rapid answers
 * count, as in every other share.
 *
 * @param answers how many
 * @param learners by how many
 * @param right how many were right
 * @param unsure how many were "not sure", which is not right
 * @param rapid how many came too fast for the item to have been read
 * @param medianMillis how long half of those took at most that were not rapid; 0 where there is
 *     none
 * @param discrimination corrected point-biserial coefficient: right or wrong against the share of
 *     right ones among the learner's answers to everything else; null below {@value
 *     FormAnalysis#FEWEST_LEARNERS} learners and where all did alike
 * @param distractors the wrong answers by what leads to them, the most chosen first
 */
public record KindAnalysis(
    int answers,
    int learners,
    int right,
    int unsure,
    int rapid,
    long medianMillis,
    @Nullable Double discrimination,
    List<Distractor> distractors) {
  private static final Comparator<Distractor> MOST_CHOSEN =
      Comparator.comparingInt(Distractor::chosen)
          .reversed()
          .thenComparing(Distractor::misconception);

  public KindAnalysis {
    distractors = List.copyOf(distractors);
  }

  /**
   * The analysis of these answers.
   *
   * @param answers to items of one kind, which are among the sums
   * @param all what all answers of each learner add up to
   */
  public static KindAnalysis of(List<Response> answers, Collection<LearnerSums> all) {
    Elsewhere elsewhere = new Elsewhere(answers, all);
    return new KindAnalysis(
        answers.size(),
        Review.learners(answers),
        count(answers, Response::correct),
        count(answers, each -> each.option() == null),
        count(answers, Response::rapid),
        median(answers),
        discrimination(answers, elsewhere),
        distractors(answers, elsewhere));
  }

  private static int count(List<Response> answers, Predicate<Response> which) {
    return (int) answers.stream().filter(which).count();
  }

  /** The lower one of two in the middle. */
  private static long median(List<Response> answers) {
    long[] read =
        answers.stream()
            .filter(each -> !each.rapid())
            .mapToLong(Response::shownMillis)
            .sorted()
            .toArray();
    return read.length == 0 ? 0 : read[(read.length - 1) / 2];
  }

  private static @Nullable Double discrimination(List<Response> answers, Elsewhere elsewhere) {
    if (elsewhere.learners() < FormAnalysis.FEWEST_LEARNERS) {
      return null;
    }
    PointBiserial against = new PointBiserial();
    for (Response each : answers) {
      Double score = elsewhere.of(each.learner());
      if (score != null) {
        against.add(each.correct(), score);
      }
    }
    double coefficient = against.coefficient();
    return Double.isNaN(coefficient) ? null : coefficient;
  }

  private static List<Distractor> distractors(List<Response> answers, Elsewhere elsewhere) {
    SortedMap<String, Choosing> beliefs = new TreeMap<>();
    for (Response each : answers) {
      for (OfferedOption option : each.offered()) {
        begin(beliefs, option.misconception(), elsewhere);
      }
      begin(beliefs, each.misconception(), elsewhere);
    }
    answers.forEach(each -> beliefs.values().forEach(belief -> belief.add(each)));
    return beliefs.values().stream().map(Choosing::found).sorted(MOST_CHOSEN).toList();
  }

  private static void begin(
      SortedMap<String, Choosing> beliefs, @Nullable String word, Elsewhere elsewhere) {
    if (word != null) {
      beliefs.computeIfAbsent(word, each -> new Choosing(each, elsewhere));
    }
  }

  /** Whether so many learners answered that the question itself can be judged. */
  public boolean isJudged() {
    return learners >= FormAnalysis.FEWEST_LEARNERS;
  }

  /** The share of right answers; higher is easier. Of at least one answer. */
  public double facility() {
    return (double) right / answers;
  }

  /** Where the facility lies, as if each answer stood for itself. Of at least one answer. */
  public WilsonInterval interval(double confidence) {
    return WilsonInterval.of(right, answers, confidence);
  }
}
