package withy.web.pages.learner;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/** One item to be answered. */
public record ItemView(
    String assignment,
    String title,
    String place,
    String item,
    String response,
    long shownAt,
    List<Svg> pictures,
    boolean chart,
    boolean flashing,
    boolean still,
    String prompt,
    List<String> facts,
    List<Choice> choices,
    @Nullable NumberField number,
    List<SlotField> slots,
    boolean unsure) {}
