package withy.web.pages.instructor;

import java.util.List;
import withy.drawing.Svg;

/** An item with its key, as an instructor sees it. */
public record Specimen(
    List<Svg> pictures,
    boolean chart,
    String concept,
    String prompt,
    List<String> facts,
    List<KeyedOption> options) {}
