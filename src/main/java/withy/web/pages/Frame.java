package withy.web.pages;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands round every page.
 *
 * @param title of the page, without the name of the product
 * @param language of its words, as HTML names it
 * @param role {@code instructor}, {@code learner} or null for a visitor
 * @param name of who is signed in
 * @param learner the id under which the browser keeps answers that could not be sent; null unless a
 *     learner is signed in
 * @param requestToken proof that a form came from a page of ours; null for a visitor
 * @param problems what is wrong with the form on it; empty when nothing is
 */
public record Frame(
    String title,
    String language,
    @Nullable String role,
    @Nullable String name,
    @Nullable String learner,
    @Nullable String requestToken,
    List<FieldProblem> problems) {
  public Frame {
    problems = List.copyOf(problems);
  }

  /** Whether the form on this page was refused. */
  public boolean refused() {
    return !problems.isEmpty();
  }

  /** What is wrong with a field, or null. */
  public @Nullable String problem(String field) {
    for (FieldProblem each : problems) {
      if (each.field().equals(field)) {
        return each.text();
      }
    }
    return null;
  }
}
