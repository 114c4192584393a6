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

  double rate() {
    return (double) errors / answers;
  }
}
