package withy.core.measurement;

import withy.core.Term;

/**
 * Wald's sequential probability ratio test: whether the share of right answers is nearer to that of
 * one who is ready or of one who is not, by as few answers as that needs (Wald 1945, Annals of
 * Mathematical Statistics 16:117; for mastery Ferguson 1969, Reckase 1983, Frick 1989).
 *
 * @param notReady share of right answers at which somebody is surely not ready
 * @param ready share of right answers at which somebody is surely ready
 * @param falseReady chance to call ready who is not, at most about
 * @param falseNotReady chance to call not ready who is, at most about
 * @param most answers after which the test ends undecided
 */
public record SequentialTest(
    double notReady, double ready, double falseReady, double falseNotReady, int most) {
  /**
   * The project's: .60 against .85, a false "ready", which is the dangerous error, in .05 and a
   * false "not ready" in .10, 40 answers at most.
   */
  public static final SequentialTest USUAL = new SequentialTest(0.60, 0.85, 0.05, 0.10, 40);

  /** So much a sum may miss a bound by rounding. */
  private static final double SLACK = 1e-12;

  /** How far a test is. */
  public enum Stand implements Term {
    READY,
    NOT_READY,
    GO_ON,
    UNDECIDED
  }

  /**
   * @throws IllegalArgumentException if the shares or the chances are not those of a test
   */
  public SequentialTest {
    boolean shares = 0 < notReady && notReady < ready && ready < 1;
    boolean chances = falseReady > 0 && falseNotReady > 0 && falseReady + falseNotReady < 1;
    if (!shares || !chances || most < 1) {
      throw new IllegalArgumentException(
          "no test: " + notReady + " " + ready + " " + falseReady + " " + falseNotReady);
    }
  }

  /** The sum at which the test says ready, natural logarithm. */
  public double readyFrom() {
    return StrictMath.log((1 - falseNotReady) / falseReady);
  }

  /** The sum at which the test says not ready, natural logarithm; negative. */
  public double notReadyFrom() {
    return StrictMath.log(falseNotReady / (1 - falseReady));
  }

  /** The logarithm of the ratio of the likelihoods after answers. */
  public double sum(int right, int wrong) {
    return right * StrictMath.log(ready / notReady)
        + wrong * StrictMath.log((1 - ready) / (1 - notReady));
  }

  /**
   * How far the test is after answers, none of which had decided it before.
   *
   * @param right how many were right, 0 or more
   * @param wrong how many were wrong, 0 or more
   */
  public Stand stand(int right, int wrong) {
    double sum = sum(right, wrong);
    if (sum >= readyFrom() - SLACK) {
      return Stand.READY;
    }
    if (sum <= notReadyFrom() + SLACK) {
      return Stand.NOT_READY;
    }
    return right + wrong >= most ? Stand.UNDECIDED : Stand.GO_ON;
  }

  /**
   * How far the test is after answers in their order: the first that decides ends it.
   *
   * @param answers whether each was right
   */
  public Stand stand(Iterable<Boolean> answers) {
    int right = 0;
    int wrong = 0;
    Stand stand = stand(0, 0);
    for (boolean each : answers) {
      if (stand != Stand.GO_ON) {
        return stand;
      }
      right += each ? 1 : 0;
      wrong += each ? 0 : 1;
      stand = stand(right, wrong);
    }
    return stand;
  }

  /**
   * What the test comes to, exactly, for one whose answers are right in a share of all cases.
   *
   * @param share 0 to 1
   */
  public Outcome outcome(double share) {
    return Outcome.of(this, share);
  }
}
