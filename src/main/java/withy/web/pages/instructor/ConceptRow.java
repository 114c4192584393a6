package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;
import withy.web.pages.Link;

/**
 * What the class gets wrong of a concept.
 *
 * @param telling the items of the class that show it best; none where no belief is named
 * @param kinds the pages of the kinds of question that measure it and were answered
 * @param samples items drawn for the page, where there is none of the class
 */
public record ConceptRow(
    String id,
    String concept,
    Svg plot,
    String verdict,
    String base,
    String belief,
    List<Figure> figures,
    @Nullable String caution,
    List<HelpRow> learners,
    List<Shown> telling,
    List<Link> kinds,
    List<Specimen> samples) {
  /**
   * An item of the class.
   *
   * @param href the address of its page
   * @param by whom the belief led astray in it, in words
   */
  public record Shown(Specimen specimen, String href, String by) {}
}
