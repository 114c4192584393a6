package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;

/** How a pattern shares a flat shape among its colours. */
final class ColourFields {
  private static final Vec RISING = new Vec(1, 1).times(1 / StrictMath.sqrt(2));
  private static final Vec FALLING = new Vec(-1, 1).times(1 / StrictMath.sqrt(2));
  private static final int DIAGONALS = 5;
  private static final int SQUARES = 4;

  /** A part of the shape in one colour. */
  record Field(Colour colour, Polygon shape) {}

  private final Polygon whole;
  private final List<Colour> colours;
  private final List<Field> fields = new ArrayList<>();

  private ColourFields(Polygon whole, List<Colour> colours) {
    this.whole = whole;
    this.colours = colours;
  }

  /**
   * @param quartered whether squared means four quarters along the edges of a diamond: the first
   *     colour at the side corners, the second above and below
   */
  static List<Field> of(
      Polygon whole, ColourPattern pattern, List<Colour> colours, boolean quartered) {
    ColourFields parts = new ColourFields(whole, colours);
    switch (pattern) {
      case PLAIN -> parts.add(0, whole);
      case HORIZONTAL -> parts.slabs(Vec.DOWN, colours.size());
      case VERTICAL -> parts.slabs(Vec.RIGHT, colours.size());
      case DIAGONAL -> parts.slabs(RISING, Math.max(DIAGONALS, colours.size()));
      case BORDER -> parts.nested();
      case SQUARED -> parts.squares(quartered);
    }
    return parts.fields;
  }

  private void add(int number, Polygon shape) {
    if (!shape.isEmpty()) {
      fields.add(new Field(colours.get(number % colours.size()), shape));
    }
  }

  private void slabs(Vec along, int count) {
    for (int i = 0; i < count; i++) {
      add(i, slab(whole, along, i, count));
    }
  }

  private Polygon slab(Polygon of, Vec along, int number, int count) {
    double from = whole.nearest(along);
    double step = (whole.farthest(along) - from) / count;
    return of.between(along, from + number * step, from + (number + 1) * step);
  }

  private void nested() {
    for (int i = 0; i < colours.size(); i++) {
      add(i, whole.shrunk(1 - 0.36 * i));
    }
  }

  private void squares(boolean quartered) {
    int count = quartered ? 2 : SQUARES;
    Vec across = quartered ? FALLING : Vec.RIGHT;
    Vec down = quartered ? RISING : Vec.DOWN;
    for (int row = 0; row < count; row++) {
      for (int column = 0; column < count; column++) {
        int colour = quartered ? row + column + 1 : row + column;
        add(colour, slab(slab(whole, down, row, count), across, column, count));
      }
    }
  }
}
