package withy.core.measurement;

import org.jspecify.annotations.Nullable;

/**
 * Answers that came too fast for the item to have been read: within a tenth of the mean time that
 * such items take, at most ten seconds (Wise and Ma 2012, NCME, from memory). For pictures of marks
 * that is less than a reaction takes, so a second at least (our own proposal).
 */
public final class RapidAnswers {
  /**
   * Share of answers that are not rapid below which a learner's answers say little (Wise and Kong
   * 2005, Applied Measurement in Education 18:163).
   */
  public static final double EFFORT = 0.90;

  private static final double SHARE = 0.10;
  private static final long LEAST_MILLIS = 1_000;
  private static final long MOST_MILLIS = 10_000;

  private RapidAnswers() {}

  /**
   * Whether an answer is rapid. It is less than half of what such items take, too: who is fast in a
   * class that is fast does not guess.
   *
   * @param shownMillis how long the item was shown
   * @param meanMillis how long items of this form are shown in the mean; null where nobody knows,
   *     and then none is rapid
   */
  public static boolean isRapid(long shownMillis, @Nullable Double meanMillis) {
    if (meanMillis == null || shownMillis >= meanMillis / 2) {
      return false;
    }
    return shownMillis < Math.max(LEAST_MILLIS, Math.min(MOST_MILLIS, SHARE * meanMillis));
  }
}
