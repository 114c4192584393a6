package withy.core.mark;

/**
 * Where a rule is written.
 *
 * @param section as the document numbers it
 * @param fromMemory whether the wording still has to be compared with the document itself
 */
public record Clause(String document, String edition, String section, boolean fromMemory) {
  static Clause read(String document, String edition, String section) {
    return new Clause(document, edition, section, false);
  }

  static Clause remembered(String document, String edition, String section) {
    return new Clause(document, edition, section, true);
  }

  /** As tests and notes cite it. */
  @Override
  public String toString() {
    return document + ", " + edition + ", " + section;
  }
}
