package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One learner, to talk over with them.
 *
 * @param behind the address of all their answers
 * @param effort what is said of answers that came too fast; null where few did
 * @param next what would be asked next and why; null where nothing is to ask
 */
public record LearnerView(
    String schoolClass,
    String className,
    String learner,
    String nickname,
    String base,
    String behind,
    @Nullable Linked effort,
    @Nullable String next,
    List<StandsRow> rows) {
  /**
   * How the learner stands with one concept.
   *
   * @param concept its id
   * @param stands in words
   * @param exact the chance that they know it now, in full
   * @param knows the same, rounded, with the answers that it is made from
   * @param right how many answers were right
   * @param began whether the first one was
   * @param believes what is believed instead; null where none is named
   */
  public record StandsRow(
      String concept,
      String name,
      String stands,
      String exact,
      Linked knows,
      Linked right,
      Linked began,
      @Nullable Linked believes) {}
}
