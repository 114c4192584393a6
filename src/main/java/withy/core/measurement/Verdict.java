package withy.core.measurement;

import withy.core.Term;

/** What a class is told of a concept. */
public enum Verdict implements Term {
  /** Too few learners or answers to say anything. */
  TOO_LITTLE,
  /** Most likely above the tolerance: teach it. */
  WEAK,
  /** Perhaps above the tolerance. */
  WATCH,
  /** Nothing says that it is above the tolerance. */
  SOUND;

  private static final int FEWEST_LEARNERS = 3;
  private static final int FEWEST_ANSWERS = 8;
  private static final int SHARE_OF_CLASS = 3;
  private static final double WEAK_FROM = 0.90;
  private static final double WATCH_FROM = 0.80;

  /**
   * The verdict on a concept: none below three learners, a third of the class or eight answers.
   *
   * @param learners how many answered
   * @param classSize how many could have
   * @param answers how many answers they gave
   * @param aboveTolerance chance that the error rate of the class is above the tolerance, 0 to 1
   */
  public static Verdict of(int learners, int classSize, int answers, double aboveTolerance) {
    boolean fewLearners =
        learners < FEWEST_LEARNERS || (long) learners * SHARE_OF_CLASS < classSize;
    if (fewLearners || answers < FEWEST_ANSWERS) {
      return TOO_LITTLE;
    }
    if (aboveTolerance >= WEAK_FROM) {
      return WEAK;
    }
    return aboveTolerance >= WATCH_FROM ? WATCH : SOUND;
  }
}
