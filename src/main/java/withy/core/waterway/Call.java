package withy.core.waterway;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;

/**
 * A mark that a boat has abeam on her voyage, and what the rules ask there.
 *
 * @param along metres from the beginning of her track to where she has it abeam
 * @param toStarboard whether she then has it on her starboard side
 * @param side on which the rules leave it; null where they tell none
 * @param pass the side of the compass on which she passes a cardinal mark; null for other marks
 */
public record Call(
    PlacedMark mark,
    double along,
    boolean toStarboard,
    @Nullable Side side,
    @Nullable Quadrant pass) {}
