package withy.core.measurement;

import java.util.ArrayList;
import java.util.List;
import withy.core.response.Response;

/**
 * What a learner may hold of one concept: knows it, holds one of its misconceptions, or guesses.
 * One of these is true at a time, and each makes the options of an item more or less likely; the
 * option chosen says which it is (Rudner 2009, Practical Assessment, Research and Evaluation 14(8),
 * with the option in place of right and wrong).
 *
 * <ul>
 *   <li>Knows: the key but for a slip, which falls on each other option alike.
 *   <li>Holds a misconception that an option tempts: that option with the pull, else each other
 *       alike. Where no option tempts it, as one who knows.
 *   <li>Guesses: each option alike.
 * </ul>
 *
 * <p>"Not sure" is taken as a wrong answer that points to no belief: a slip for one who knows, what
 * the pull leaves for one who is tempted, any wrong option for one who guesses.
 *
 * <p>An answer given freely, a number or a mark put together, has no options. It is taken as one of
 * {@value #FREE_OPTIONS}, as many as a choice usually has: the right one, the one to which the
 * belief named with it leads, and others. So .90 for the right one by one who knows and .033 for a
 * given wrong one; .75 for the belief's own answer by one who holds it; .25 for any by one who
 * guesses. That is more than a guess among all numbers would hit, and so errs towards guessing, not
 * towards a belief: one free answer that follows a belief never weighs more than one option of four
 * does. The belief named is the only one that the answer is known to tempt; whoever holds another
 * one is taken for one who knows, so that a free answer speaks against no belief that it may not
 * have asked for. A wrong answer that nothing explains is a slip or a guess.
 *
 * @param misconceptions of the concept, in the order of the states
 * @param prior of knows, each misconception, guesses; adds up to 1
 * @param learning share of every other state that moves to knows after an answer, since each is
 *     followed at once by its explanation
 */
public record LearnerModel(List<String> misconceptions, List<Double> prior, double learning) {
  private static final double KNOWS = 0.70;
  private static final double MISTAKEN = 0.20;
  private static final double GUESSES = 0.10;
  private static final double LEARNING = 0.10;

  /**
   * @throws IllegalArgumentException if the prior has not a share for each state
   */
  public LearnerModel {
    misconceptions = List.copyOf(misconceptions);
    prior = List.copyOf(prior);
    if (prior.size() != misconceptions.size() + 2) {
      throw new IllegalArgumentException(prior.size() + " shares of " + misconceptions);
    }
  }

  /**
   * The usual model: knows .70, the misconceptions .20 among them, guesses .10. A concept without
   * misconceptions keeps the ratio of the other two.
   */
  public static LearnerModel of(List<String> misconceptions) {
    int count = misconceptions.size();
    double rest = count == 0 ? KNOWS + GUESSES : 1;
    List<Double> prior = new ArrayList<>();
    prior.add(KNOWS / rest);
    misconceptions.forEach(each -> prior.add(MISTAKEN / count));
    prior.add(GUESSES / rest);
    return new LearnerModel(misconceptions, prior, LEARNING);
  }

  /** Sums to which answers can be added, as this model takes them. */
  public StateSums noAnswers() {
    return StateSums.none(learning);
  }

  /** Sums as the usual model takes them. */
  static StateSums usualNoAnswers() {
    return StateSums.none(LEARNING);
  }

  /**
   * What is believed of a learner after answers on the concept.
   *
   * @param answers in the order in which they were given
   */
  public LearnerState after(String learner, String concept, List<Response> answers) {
    StateSums sums = noAnswers();
    for (Response answer : answers) {
      sums = sums.plus(answer);
    }
    return after(learner, concept, sums);
  }

  /** What is believed of a learner after the answers that were summed up. */
  public LearnerState after(String learner, String concept, StateSums sums) {
    return LearnerState.of(
        learner, concept, sums.answers(), misconceptions, sums.chances(misconceptions, prior));
  }
}
