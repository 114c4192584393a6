package withy.core.measurement;

import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** How likely an answer is in each state of a learner; {@link LearnerModel} says why. */
final class Likelihood {
  static final double SLIP = 0.10;
  private static final double PULL = 0.75;
  private static final int FREE_OPTIONS = 4;

  private Likelihood() {}

  /** Of one who knows. */
  static double ofKnowing(Response answer) {
    if (answer.option() == null) {
      return SLIP;
    }
    return answer.correct() ? right() : slip(options(answer));
  }

  /** Of one who guesses. */
  static double ofGuessing(Response answer) {
    double chance = 1.0 / options(answer);
    return answer.option() == null ? 1 - chance : chance;
  }

  /** Of one who holds a belief. */
  static double ofBelieving(String belief, Response answer) {
    int tempting = tempting(belief, answer);
    if (tempting == 0) {
      return ofKnowing(answer);
    }
    if (answer.option() == null) {
      return 1 - PULL;
    }
    return fell(belief, answer) ? pulled(tempting) : resisted(options(answer), tempting);
  }

  /** Of one who knows to give the key. */
  static double right() {
    return 1 - SLIP;
  }

  /** Of one who knows to give a certain one of the other options. */
  static double slip(int options) {
    return SLIP / (options - 1);
  }

  /** Of one who holds a belief to give a certain one of those that tempt. */
  static double pulled(int tempting) {
    return PULL / tempting;
  }

  /** Of one who holds a belief to give a certain one of those that do not. */
  static double resisted(int options, int tempting) {
    return (1 - PULL) / (options - tempting);
  }

  private static int options(Response answer) {
    return answer.offered().isEmpty() ? FREE_OPTIONS : answer.offered().size();
  }

  private static boolean fell(String belief, Response answer) {
    OfferedOption chosen = answer.chosen();
    return chosen == null ? belief.equals(answer.misconception()) : chosen.tempts(belief);
  }

  private static int tempting(String belief, Response answer) {
    if (answer.offered().isEmpty()) {
      return belief.equals(answer.misconception()) ? 1 : 0;
    }
    int tempting = 0;
    for (OfferedOption option : answer.offered()) {
      tempting += option.tempts(belief) ? 1 : 0;
    }
    return tempting;
  }
}
