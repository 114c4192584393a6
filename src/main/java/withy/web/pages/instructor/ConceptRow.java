package withy.web.pages.instructor;

import java.util.List;
import withy.drawing.Svg;

/** What the class gets wrong of a concept. */
public record ConceptRow(
    String id,
    String concept,
    Svg plot,
    String verdict,
    String base,
    String belief,
    String figures,
    List<HelpRow> learners,
    List<Specimen> samples) {}
