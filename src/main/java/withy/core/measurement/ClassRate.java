package withy.core.measurement;

import java.util.List;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The error rate of a class on one concept: the mean of the rates of its learners, one learner one
 * vote, and how sure it is.
 *
 * <p>The answers of a learner hang together and an adaptive drill asks the weak more, so answers
 * are not pooled. The variance of the mean gives an effective number of answers, never more than
 * were given, and with it a Jeffreys interval (Korn and Graubard 1998, Survey Methodology 24:193;
 * Brown, Cai and DasGupta 2001, Statistical Science 16:101).
 *
 * @param learners how many answered
 * @param answers how many answers they gave
 * @param mean mean of the learners' error rates
 * @param variance of that mean
 * @param effectiveAnswers how many independent answers would tell as much
 * @param effectiveErrors mean times effective answers
 * @param lower lower end of the 90 % interval; 0 when nobody erred
 * @param upper upper end of the 90 % interval; 1 when every answer was wrong
 * @param aboveTolerance chance that the error rate is above the tolerance
 */
public record ClassRate(
    int learners,
    int answers,
    double mean,
    double variance,
    double effectiveAnswers,
    double effectiveErrors,
    double lower,
    double upper,
    double aboveTolerance) {

  /** The error rate that a class may have on a concept before it counts as weak. */
  public static final double TOLERANCE = 0.25;

  private static final double TAIL = 0.05;
  private static final double WIDE = 0.40;
  private static final double JEFFREYS = 0.5;

  /**
   * The rate of a class at the usual tolerance.
   *
   * @param tallies one for each learner who answered, at least one
   * @param classSize learners in the class, those who did not answer among them
   * @throws IllegalArgumentException when nobody answered or more answered than the class has
   */
  public static ClassRate of(List<Tally> tallies, int classSize) {
    int learners = tallies.size();
    if (learners == 0 || learners > classSize) {
      throw new IllegalArgumentException(learners + " learners of a class of " + classSize);
    }
    int answers = tallies.stream().mapToInt(Tally::answers).sum();
    int errors = tallies.stream().mapToInt(Tally::errors).sum();
    double mean = tallies.stream().mapToDouble(Tally::rate).sum() / learners;
    double variance = within(tallies, mean) + absent(tallies, mean, classSize);
    boolean uniform = errors == 0 || errors == answers;
    double effective = uniform ? kish(tallies) : effective(mean, variance, answers);
    return settle(learners, answers, errors, mean, variance, effective);
  }

  /** Whether the 90 % interval is too wide to act on. */
  public boolean wide() {
    return upper - lower > WIDE;
  }

  private static ClassRate settle(
      int learners, int answers, int errors, double mean, double variance, double effective) {
    double wrong = mean * effective;
    BetaDistribution posterior =
        BetaDistribution.of(wrong + JEFFREYS, effective - wrong + JEFFREYS);
    double lower = errors == 0 ? 0 : posterior.inverseCumulativeProbability(TAIL);
    double upper = errors == answers ? 1 : posterior.inverseSurvivalProbability(TAIL);
    double above = posterior.survivalProbability(TOLERANCE);
    return new ClassRate(learners, answers, mean, variance, effective, wrong, lower, upper, above);
  }

  /** Chance within each learner: rates drawn towards the class, so that 0 of 2 is not certainty. */
  private static double within(List<Tally> tallies, double mean) {
    int learners = tallies.size();
    double typical = (mean * learners + 0.5) / (learners + 1);
    double sum = 0;
    for (Tally tally : tallies) {
      double p = (tally.errors() + typical) / (tally.answers() + 1);
      sum += p * (1 - p) / tally.answers();
    }
    return sum / learners / learners;
  }

  /** Chance of who answered: only those who did not can make the class another one. */
  private static double absent(List<Tally> tallies, double mean, int classSize) {
    int learners = tallies.size();
    if (learners == 1) {
      return 0;
    }
    double squares = tallies.stream().mapToDouble(t -> (t.rate() - mean) * (t.rate() - mean)).sum();
    return squares / (learners - 1) / learners * (1 - (double) learners / classSize);
  }

  private static double effective(double mean, double variance, int answers) {
    return Math.min(Math.max(mean * (1 - mean) / variance, 1), answers);
  }

  /** Kish's effective size for equal votes: where all erred alike the variance says nothing. */
  private static double kish(List<Tally> tallies) {
    double inverse = tallies.stream().mapToDouble(t -> 1.0 / t.answers()).sum();
    return (double) tallies.size() * tallies.size() / inverse;
  }
}
