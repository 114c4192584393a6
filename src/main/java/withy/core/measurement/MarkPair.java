package withy.core.measurement;

/**
 * A kind of mark that was shown, and one that stood among the answers, the right one or another.
 */
public record MarkPair(String shown, String answered) implements Comparable<MarkPair> {
  /** Whether it is a mark and itself. */
  public boolean isRight() {
    return shown.equals(answered);
  }

  @Override
  public int compareTo(MarkPair other) {
    int first = shown.compareTo(other.shown);
    return first != 0 ? first : answered.compareTo(other.answered);
  }
}
