package withy.core.waterway;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;

/**
 * A mark where it stands.
 *
 * @param serves the id of the fairway it belongs to, of a mark at a junction that of the preferred
 *     one; null for a mark that belongs to none
 * @param label the number or letter it bears, null where it bears none
 */
public record PlacedMark(
    MarkKind kind,
    Position position,
    @Nullable String serves,
    @Nullable String label,
    Appearance appearance) {}
