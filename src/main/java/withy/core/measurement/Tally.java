package withy.core.measurement;

/**
 * How many answers a learner gave on a concept and how many of them were wrong.
 *
 * @param answers at least one
 * @param errors 0 to answers
 */
public record Tally(int answers, int errors) {
  public Tally {
    if (answers < 1 || errors < 0 || errors > answers) {
      throw new IllegalArgumentException(errors + " errors in " + answers + " answers");
    }
  }

  /**
   * What is left without a part of it.
   *
   * @throws IllegalArgumentException if nothing is, or it is no part
   */
  Tally without(Tally part) {
    return new Tally(answers - part.answers, errors - part.errors);
  }

  /** With one more answer. */
  public Tally and(boolean correct) {
    return new Tally(answers + 1, errors + (correct ? 0 : 1));
  }

  /** One answer. */
  public static Tally of(boolean correct) {
    return new Tally(1, correct ? 0 : 1);
  }

  double rate() {
    return (double) errors / answers;
  }
}
