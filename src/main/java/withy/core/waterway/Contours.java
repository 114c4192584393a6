package withy.core.waterway;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Position;

/**
 * The lines of equal depth of a field, by marching squares. Each is a closed ring of places, the
 * first not repeated, with the shallower water on its right hand; where the shallow runs out of the
 * field, the ring follows the rim. A place within the field lies where a line between two
 * neighbouring centres crosses the depth. In a saddle the saddle point of the bilinear surface
 * decides which corners belong together.
 */
public final class Contours {
  private static final int NONE = -1;
  private static final int SOUTH = 0;
  private static final int EAST = 1;
  private static final int NORTH = 2;
  private static final int WEST = 3;

  private final DepthField field;
  private final double level;

  /** Cells between centres and one row of them beyond the rim, where all is deep. */
  private final int columns;

  private final int rows;
  private final boolean[] walked;

  private Contours(DepthField field, double level) {
    this.field = field;
    this.level = level;
    this.columns = field.columns() + 1;
    this.rows = field.rows() + 1;
    this.walked = new boolean[columns * rows * 4];
  }

  /**
   * The rings round all that is shallower than a level.
   *
   * @param level metres below datum; negative for what dries
   */
  public static List<List<Position>> shallowerThan(DepthField field, double level) {
    Contours contours = new Contours(field, level);
    List<List<Position>> rings = new ArrayList<>();
    for (int row = 0; row < contours.rows; row++) {
      for (int column = 0; column < contours.columns; column++) {
        for (int side = SOUTH; side <= WEST; side++) {
          contours.ring(column, row, side, rings);
        }
      }
    }
    return rings;
  }

  /** Walks the ring that enters a cell by a side, unless it was walked or there is none. */
  private void ring(int column, int row, int side, List<List<Position>> rings) {
    List<Position> ring = new ArrayList<>();
    int entered = side;
    int x = column;
    int y = row;
    while (!walked[index(x, y, entered)] && leaving(x, y, entered) != NONE) {
      walked[index(x, y, entered)] = true;
      add(ring, crossing(x, y, entered));
      int left = leaving(x, y, entered);
      x += left == EAST ? 1 : left == WEST ? -1 : 0;
      y += left == NORTH ? 1 : left == SOUTH ? -1 : 0;
      entered = (left + 2) % 4;
    }
    if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
      ring.remove(ring.size() - 1);
    }
    if (ring.size() > 2) {
      rings.add(List.copyOf(ring));
    }
  }

  private static void add(List<Position> ring, Position place) {
    if (ring.isEmpty() || !ring.get(ring.size() - 1).equals(place)) {
      ring.add(place);
    }
  }

  private int index(int column, int row, int side) {
    return (row * columns + column) * 4 + side;
  }

  /**
   * The side by which the ring that enters a cell by a side leaves it; none where no ring enters
   * there. Corner i lies at the beginning of side i, going round counter-clockwise; a ring enters
   * with the shallow on its right.
   */
  private int leaving(int column, int row, int side) {
    if (!shallow(column, row, side + 1) || shallow(column, row, side)) {
      return NONE;
    }
    boolean nextShallow = shallow(column, row, side + 2);
    boolean lastShallow = shallow(column, row, side + 3);
    if (!nextShallow && lastShallow) {
      return (isJoined(column, row) ? side + 3 : side + 1) % 4;
    }
    if (!nextShallow) {
      return (side + 1) % 4;
    }
    return (lastShallow ? side + 3 : side + 2) % 4;
  }

  /** Whether the shallow corners of a saddle are one piece: its saddle point is shallow. */
  private boolean isJoined(int column, int row) {
    double a = depth(column, row, 0);
    double b = depth(column, row, 1);
    double c = depth(column, row, 2);
    double d = depth(column, row, 3);
    return (a * c - b * d) / (a + c - b - d) < level;
  }

  private boolean shallow(int column, int row, int corner) {
    return depth(column, row, corner) < level;
  }

  private double depth(int column, int row, int corner) {
    int x = x(column, corner);
    int y = y(row, corner);
    boolean beyond = x < 0 || y < 0 || x >= field.columns() || y >= field.rows();
    return beyond ? Double.POSITIVE_INFINITY : field.depth(x, y);
  }

  private static int x(int column, int corner) {
    return column - 1 + (corner % 4 == 1 || corner % 4 == 2 ? 1 : 0);
  }

  private static int y(int row, int corner) {
    return row - 1 + (corner % 4 >= 2 ? 1 : 0);
  }

  /** Where the level lies on a side of a cell; on the rim where the side leads beyond it. */
  private Position crossing(int column, int row, int side) {
    double deep = depth(column, row, side);
    double shallow = depth(column, row, side + 1);
    double share = Double.isInfinite(deep) ? 0 : (level - shallow) / (deep - shallow);
    double x = x(column, side + 1) + share * (x(column, side) - x(column, side + 1));
    double y = y(row, side + 1) + share * (y(row, side) - y(row, side + 1));
    return new Position(
        field.origin().x() + x * field.cell(), field.origin().y() + y * field.cell());
  }
}
