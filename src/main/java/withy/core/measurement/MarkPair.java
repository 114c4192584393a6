package withy.core.measurement;

/** A kind of mark that was shown, and another one that stood among the answers. */
public record MarkPair(String shown, String answered) implements Comparable<MarkPair> {
  @Override
  public int compareTo(MarkPair other) {
    int first = shown.compareTo(other.shown);
    return first != 0 ? first : answered.compareTo(other.answered);
  }
}
