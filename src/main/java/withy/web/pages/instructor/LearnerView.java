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
    @Nullable String effort,
    @Nullable String next,
    List<StandsRow> rows) {
  /**
   * How the learner stands with one concept.
   *
   * @param concept its id
   * @param stands in words
   * @param base how many answers were right
   * @param behind the address of those answers
   * @param begun whether the first one was
   * @param first the address of that one
   * @param led the address of the answers that the belief led to; null where none is named
   */
  public record StandsRow(
      String concept,
      String name,
      String stands,
      String knows,
      String exact,
      String base,
      String behind,
      String begun,
      String first,
      @Nullable String belief,
      @Nullable String led) {}
}
