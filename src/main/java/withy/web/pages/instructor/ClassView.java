package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.drawing.Svg;

/**
 * One class.
 *
 * @param first the drill set that a class without drills can be given at once; null where it has a
 *     drill, or its practice no item for any
 * @param colleagues to whom it can be handed; the one of whom nobody is chosen stands first
 */
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
    @Nullable Choice first,
    List<WeakRow> weakest,
    List<Choice> colleagues) {}
