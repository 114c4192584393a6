package withy.core.measurement;

import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.response.OfferedOption;

/**
 * The wrong answers to items of one kind to which one belief leads: what a wrong option is where
 * every learner meets other items.
 *
 * @param misconception by its word; that of {@link OfferedOption#UNEXPLAINED} stands for all wrong
 *     answers to which no belief leads, a mixture
 * @param chosen how often it was given
 * @param offered in how many answers it could be: those that had it among their options, and where
 *     the answer is free, or it is the mixture, all
 * @param work whether it does what a wrong option is for; null where that cannot be told
 */
public record Distractor(String misconception, int chosen, int offered, @Nullable Work work) {
  /** From this share on an option counts as chosen. */
  public static final double FUNCTIONAL_FROM = 0.05;

  /** The share of those who could choose it. */
  public double share() {
    return (double) chosen / offered;
  }

  /** Whether no belief leads here. */
  public boolean isMixture() {
    return misconception.equals(OfferedOption.UNEXPLAINED);
  }

  /**
   * What an option does. It is functional when at least 5 % choose it and those do worse elsewhere
   * (Haladyna and Downing 1993, Educational and Psychological Measurement 53:999, from memory).
   */
  public enum Work implements Term {
    FUNCTIONAL,
    /** Fewer than 5 % choose it. */
    HARDLY_CHOSEN,
    /** Those who choose it do not do worse elsewhere. */
    NOT_BY_THE_WEAKER;

    /**
     * What an option does that was chosen by a share.
     *
     * @param discrimination coefficient of choosing it with the score elsewhere; NaN where all
     *     chose or scored alike
     * @return null where it is chosen and the coefficient cannot be told
     */
    static @Nullable Work of(double share, double discrimination) {
      if (share < FUNCTIONAL_FROM) {
        return HARDLY_CHOSEN;
      }
      if (Double.isNaN(discrimination)) {
        return null;
      }
      return discrimination < 0 ? FUNCTIONAL : NOT_BY_THE_WEAKER;
    }
  }
}
