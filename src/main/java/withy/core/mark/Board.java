package withy.core.mark;

import org.jspecify.annotations.Nullable;

/**
 * The board of a daybeacon. The colours of the appearance fill it inside the border; where there is
 * a ground, they fill a smaller panel of the board's shape in the middle of that ground.
 *
 * @param border the colour of its edge
 * @param ground the colour between the edge and the panel; null where the colours fill the board
 * @param taper null for a board with upright sides
 */
public record Board(
    BoardShape shape, Colour border, @Nullable Colour ground, @Nullable Taper taper) {
  public static Board of(BoardShape shape, Colour border) {
    return new Board(shape, border, null, null);
  }
}
