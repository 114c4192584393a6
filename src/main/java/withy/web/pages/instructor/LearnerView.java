package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One learner, to talk over with them.
 *
 * @param effort what is said of answers that came too fast; null where few did
 * @param next what would be asked next and why; null where nothing is to ask
 */
public record LearnerView(
    String schoolClass,
    String className,
    String learner,
    String nickname,
    String base,
    @Nullable String effort,
    @Nullable String next,
    List<StandsRow> rows) {
  /**
   * How the learner stands with one concept.
   *
   * @param concept its id
   * @param stands in words
   * @param base how many answers were right
   * @param begun whether the first one was
   */
  public record StandsRow(
      String concept,
      String name,
      String stands,
      String knows,
      String exact,
      String base,
      String begun,
      @Nullable String belief) {}
}
