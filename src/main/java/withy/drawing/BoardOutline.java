package withy.drawing;

import withy.core.mark.Board;
import withy.core.mark.ColourPattern;

/** The outlines of dayboards. */
final class BoardOutline {
  private BoardOutline() {}

  /**
   * The outline about the middle of a board; notices lie, striped leading boards stand, in units of
   * which a pillar's tower has 118.
   */
  static Polygon of(Board board, ColourPattern pattern) {
    if (board.taper() != null) {
      return switch (board.taper()) {
        case UP -> Polygon.of(-15, -40, 15, -40, 34, 40, -34, 40);
        case DOWN -> Polygon.of(-34, -40, 34, -40, 15, 40, -15, 40);
      };
    }
    return switch (board.shape()) {
      case SQUARE -> Polygon.box(-34, -34, 34, 34);
      case TRIANGLE -> Polygon.of(0, -46, 44, 30, -44, 30);
      case DIAMOND -> Polygon.of(0, -44, 44, 0, 0, 44, -44, 0);
      case OCTAGON -> octagon(37);
      case RECTANGLE ->
          pattern == ColourPattern.VERTICAL
              ? Polygon.box(-27, -41, 27, 41)
              : Polygon.box(-44, -28, 44, 28);
    };
  }

  private static Polygon octagon(double r) {
    double c = r * (StrictMath.sqrt(2) - 1);
    return Polygon.of(-c, -r, c, -r, r, -c, r, c, c, r, -c, r, -r, c, -r, -c);
  }
}
