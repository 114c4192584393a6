package withy.core.hydrography;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.mark.BodyShape;
import withy.core.mark.MarkKind;

/**
 * A mark as a survey tells it: what it is and where it stands. How it looks is up to the practice.
 *
 * @param serves the id of the fairway it belongs to, of a mark at a junction that of the preferred
 *     one; null for a mark that belongs to none
 * @param label the number or letter it bears in region A; null where it bears none
 * @param body null where the survey does not tell it
 * @param fixed whether it stands on the ground
 * @param light of which the rhythm counts, and the colour where the kind leaves it open; null for
 *     an unlit mark
 */
public record SurveyedMark(
    MarkKind kind,
    Position position,
    @Nullable String serves,
    @Nullable String label,
    @Nullable BodyShape body,
    boolean fixed,
    @Nullable LightCharacter light) {}
