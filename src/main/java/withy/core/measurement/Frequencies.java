package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * How often learners are found to begin with each state of one concept: from what many learners
 * answered, in place of a guess made once for all concepts. A belief that is common is then named
 * after fewer answers, and one that nobody holds does not take its place; {@code simulate} shows
 * what that is worth.
 *
 * <p>Found by expectation and maximisation (Dempster, Laird and Rubin 1977, Journal of the Royal
 * Statistical Society B 39:1, from memory) from the usual prior, which counts as much as {@value
 * #PSEUDO_COUNT} learners.
 */
public final class Frequencies {
  private static final double PSEUDO_COUNT = 10;
  private static final int ROUNDS = 6;

  /** What is learnt shows in the answers that follow. */
  private static final double LEARNING = 0;

  private Frequencies() {}

  /** Sums as the models that are found here take them. */
  static StateSums noAnswers() {
    return StateSums.none(LEARNING);
  }

  /**
   * The model that these learners give, of what answers show.
   *
   * @param misconceptions of the concept
   * @param learners what each learner who answered on the concept adds up to
   */
  public static LearnerModel of(List<String> misconceptions, Collection<ConceptSums> learners) {
    LearnerModel usual = LearnerModel.of(misconceptions);
    List<Double> prior = usual.prior();
    for (int round = 0; round < ROUNDS && !learners.isEmpty(); round++) {
      prior = renewed(usual, prior, learners);
    }
    return new LearnerModel(misconceptions, prior, LEARNING);
  }

  private static List<Double> renewed(
      LearnerModel usual, List<Double> prior, Collection<ConceptSums> learners) {
    double[] counts = usual.prior().stream().mapToDouble(each -> each * PSEUDO_COUNT).toArray();
    for (ConceptSums learner : learners) {
      double[] began = learner.shown().beginnings(usual.misconceptions(), prior);
      for (int i = 0; i < counts.length; i++) {
        counts[i] += began[i];
      }
    }
    List<Double> renewed = new ArrayList<>();
    for (double each : counts) {
      renewed.add(each / (PSEUDO_COUNT + learners.size()));
    }
    return renewed;
  }
}
