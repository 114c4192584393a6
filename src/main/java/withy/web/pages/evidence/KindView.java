package withy.web.pages.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.web.pages.instructor.Figure;
import withy.web.pages.instructor.Specimen;

/**
 * How the items of one form on one concept do in a class.
 *
 * @param base how many answers of how many learners, in words
 * @param behind the address of these answers
 * @param older that only the newest answers are looked at; null where these are all
 * @param unjudged why the question itself is not judged; null where it is
 * @param rows what was answered; none where nobody answered
 * @param items the newest of the kind
 */
public record KindView(
    String schoolClass,
    String className,
    String form,
    String concept,
    String conceptName,
    String base,
    String behind,
    @Nullable String older,
    List<Figure> figures,
    @Nullable String unjudged,
    List<Row> rows,
    List<Shown> items) {
  /**
   * An answer.
   *
   * @param count how often of how many
   * @param behind the address of these answers
   * @param work what it does as an option; null where that is not told
   */
  public record Row(
      String answer, String share, String count, String behind, @Nullable String work) {}

  /**
   * An item of the class.
   *
   * @param href the address of its page
   */
  public record Shown(Specimen specimen, String href) {}
}
