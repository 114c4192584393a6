package withy.core.hydrography;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import withy.core.geometry.Area;
import withy.core.geometry.Position;

/**
 * The square cells of a water, numbered row by row from the south, each row from the west.
 *
 * @param origin the centre of the first cell
 * @param cell metres from centre to centre
 */
record Grid(Position origin, double cell, int columns, int rows) {
  private static final double DIAGONAL = StrictMath.sqrt(2);

  int size() {
    return columns * rows;
  }

  Position centre(int index) {
    return new Position(
        origin.x() + index % columns * cell, origin.y() + Math.floorDiv(index, columns) * cell);
  }

  /** The cell whose centre lies nearest to a place. */
  int at(Position place) {
    int column = held((place.x() - origin.x()) / cell, columns);
    int row = held((place.y() - origin.y()) / cell, rows);
    return row * columns + column;
  }

  private static int held(double steps, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.rint(steps)));
  }

  /** Notes a value in all cells whose centres lie in an area. */
  void fill(Area area, int[] values, int value) {
    for (int row = 0; row < rows; row++) {
      List<Double> crossings = area.crossings(origin.y() + row * cell);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        int first = (int) Math.ceil(Math.max(0, (crossings.get(i) - origin.x()) / cell));
        double last = Math.min(columns - 1, (crossings.get(i + 1) - origin.x()) / cell);
        for (int column = first; column <= last; column++) {
          values[row * columns + column] = value;
        }
      }
    }
  }

  /**
   * Metres from every cell to the nearest that is one of some: in steps to the eight neighbours, so
   * up to a twelfth too long; infinite where there is none.
   */
  double[] distances(IntPredicate from) {
    double[] distances = new double[size()];
    Arrays.fill(distances, Double.POSITIVE_INFINITY);
    for (int i = 0; i < distances.length; i++) {
      if (from.test(i)) {
        distances[i] = 0;
      }
    }
    for (int i = 0; i < distances.length; i++) {
      spread(distances, i, -1);
    }
    for (int i = distances.length - 1; i >= 0; i--) {
      spread(distances, i, 1);
    }
    return distances;
  }

  /** Takes the way over the neighbours that were looked at before. */
  private void spread(double[] distances, int index, int ahead) {
    int column = index % columns;
    nearer(distances, index, column + ahead, index + ahead, 1);
    int beyond = index + ahead * columns;
    if (beyond >= 0 && beyond < distances.length) {
      nearer(distances, index, column, beyond, 1);
      nearer(distances, index, column - 1, beyond - 1, DIAGONAL);
      nearer(distances, index, column + 1, beyond + 1, DIAGONAL);
    }
  }

  private void nearer(double[] distances, int index, int column, int neighbour, double steps) {
    if (column >= 0 && column < columns) {
      distances[index] = Math.min(distances[index], distances[neighbour] + steps * cell);
    }
  }
}
