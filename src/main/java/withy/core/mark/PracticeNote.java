package withy.core.mark;

import java.util.List;

/**
 * A fact that a practice states and no mark shows.
 *
 * @param id lower-case words joined by hyphens
 * @param sources where it is laid down
 */
public record PracticeNote(String id, List<Clause> sources) {
  public PracticeNote {
    sources = List.copyOf(sources);
  }

  static PracticeNote of(String id, Clause... sources) {
    return new PracticeNote(id, List.of(sources));
  }

  /** The key of its wording. */
  public String messageKey() {
    return "note." + id;
  }
}
