package withy.core.measurement;

import org.jspecify.annotations.Nullable;

/**
 * How the items of one form do.
 *
 * @param answers at least one
 * @param facility share correct; higher is easier
 * @param discrimination corrected point-biserial coefficient over the answers; null below {@value
 *     #FEWEST_LEARNERS} learners and where all did alike
 */
public record FormAnalysis(
    String form, int answers, double facility, @Nullable Double discrimination) {
  /** Below this many learners a discrimination says nothing. */
  public static final int FEWEST_LEARNERS = 30;
}
