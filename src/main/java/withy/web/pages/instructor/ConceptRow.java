package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/** What the class gets wrong of a concept. */
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
    List<Specimen> samples) {}
