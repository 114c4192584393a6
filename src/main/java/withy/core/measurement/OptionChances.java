package withy.core.measurement;

import java.util.Arrays;
import java.util.List;
import withy.core.response.OfferedOption;

/**
 * How likely each option of an item is before it is chosen, in a state of the learner: the same
 * figures as those by which an answer is weighed ({@link LearnerModel}). Options are in their
 * order; at least two, and the key has no misconception.
 */
public final class OptionChances {
  private OptionChances() {}

  /** Of one who knows. */
  public static double[] ofKnowing(List<OfferedOption> options) {
    double[] chances = new double[options.size()];
    for (int i = 0; i < chances.length; i++) {
      boolean isKey = options.get(i).misconception() == null;
      chances[i] = isKey ? Likelihood.right() : Likelihood.slip(chances.length);
    }
    return chances;
  }

  /** Of one who guesses. */
  public static double[] ofGuessing(List<OfferedOption> options) {
    double[] chances = new double[options.size()];
    Arrays.fill(chances, 1.0 / chances.length);
    return chances;
  }

  /** Of one who holds a belief. */
  public static double[] ofBelieving(String belief, List<OfferedOption> options) {
    int tempting = (int) options.stream().filter(each -> each.tempts(belief)).count();
    if (tempting == 0) {
      return ofKnowing(options);
    }
    double[] chances = new double[options.size()];
    for (int i = 0; i < chances.length; i++) {
      chances[i] =
          options.get(i).tempts(belief)
              ? Likelihood.pulled(tempting)
              : Likelihood.resisted(chances.length, tempting);
    }
    return chances;
  }
}
