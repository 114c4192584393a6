package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/** One class. */
public record ClassView(
    String id,
    String name,
    String practice,
    String practiceId,
    String size,
    String code,
    String joinLink,
    Svg qr,
    @Nullable String news,
    List<AssignedRow> drills,
    List<WeakRow> weakest) {}
