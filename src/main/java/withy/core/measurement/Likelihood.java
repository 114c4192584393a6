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
    if (answer.correct()) {
      return 1 - SLIP;
    }
    return answer.option() == null ? SLIP : SLIP / (options(answer) - 1);
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
    boolean fell = belief.equals(answer.misconception());
    return fell ? PULL / tempting : (1 - PULL) / (options(answer) - tempting);
  }

  private static int options(Response answer) {
    return answer.offered().isEmpty() ? FREE_OPTIONS : answer.offered().size();
  }

  private static int tempting(String belief, Response answer) {
    if (answer.offered().isEmpty()) {
      return belief.equals(answer.misconception()) ? 1 : 0;
    }
    int tempting = 0;
    for (OfferedOption option : answer.offered()) {
      tempting += belief.equals(option.misconception()) ? 1 : 0;
    }
    return tempting;
  }
}
