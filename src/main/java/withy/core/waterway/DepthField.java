package withy.core.waterway;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * Depths of a stretch of water in metres below chart datum, dangers included; what dries is
 * negative. Values stand at the centres of square cells and are whole decimetres; between centres
 * the depth is bilinear, beyond the outermost ones it is theirs.
 */
public final class DepthField {
  private static final double DECIMETRES = 10;

  private final Position origin;
  private final double cell;
  private final int columns;
  private final int rows;
  private final short[] decimetres;

  /**
   * A field of depths.
   *
   * @param origin the centre of the most south-western cell
   * @param cell metres from centre to centre, above 0
   * @param columns from west to east, at least 2
   * @param depths metres, row by row from the south, each from the west; rounded to decimetres
   * @throws IllegalArgumentException if there are not two rows and columns of finite depths
   */
  public DepthField(Position origin, double cell, int columns, double[] depths) {
    if (!(cell > 0) || columns < 2 || depths.length % columns != 0 || depths.length < 2 * columns) {
      throw new IllegalArgumentException(
          depths.length + " depths in " + columns + " columns of " + cell + " m are no field");
    }
    this.origin = origin;
    this.cell = cell;
    this.columns = columns;
    this.rows = depths.length / columns;
    this.decimetres = new short[depths.length];
    for (int i = 0; i < depths.length; i++) {
      decimetres[i] = decimetres(depths[i]);
    }
  }

  private static short decimetres(double depth) {
    if (!(Math.abs(depth) < Short.MAX_VALUE / DECIMETRES)) {
      throw new IllegalArgumentException(depth + " m is no depth");
    }
    return (short) Math.round(depth * DECIMETRES);
  }

  public Position origin() {
    return origin;
  }

  public double cell() {
    return cell;
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  /** Metres from west to east between the outermost centres. */
  public double width() {
    return (columns - 1) * cell;
  }

  /** Metres from south to north between the outermost centres. */
  public double height() {
    return (rows - 1) * cell;
  }

  /** The depth at the centre of a cell. */
  public double depth(int column, int row) {
    return decimetres[row * columns + column] / DECIMETRES;
  }

  /** Whether a place lies among the centres. */
  public boolean contains(Position place) {
    double x = place.x() - origin.x();
    double y = place.y() - origin.y();
    return x >= 0 && y >= 0 && x <= width() && y <= height();
  }

  /** Whether all of a way lies among the centres. */
  public boolean contains(Polyline way) {
    return way.points().stream().allMatch(this::contains);
  }

  /** The depth at a place. */
  public double depth(Position place) {
    double across = held((place.x() - origin.x()) / cell, columns - 1);
    double up = held((place.y() - origin.y()) / cell, rows - 1);
    int column = Math.min((int) across, columns - 2);
    int row = Math.min((int) up, rows - 2);
    double east = across - column;
    double north = up - row;
    double south = depth(column, row) * (1 - east) + depth(column + 1, row) * east;
    double above = depth(column, row + 1) * (1 - east) + depth(column + 1, row + 1) * east;
    return south * (1 - north) + above * north;
  }

  /** The part of the field whose centres lie within a distance east, west, north and south. */
  public DepthField around(Position middle, double reach) {
    int west = first((middle.x() - origin.x() - reach) / cell, columns);
    int east = last((middle.x() - origin.x() + reach) / cell, columns);
    int south = first((middle.y() - origin.y() - reach) / cell, rows);
    int north = last((middle.y() - origin.y() + reach) / cell, rows);
    double[] part = new double[(east - west + 1) * (north - south + 1)];
    int next = 0;
    for (int row = south; row <= north; row++) {
      for (int column = west; column <= east; column++) {
        part[next++] = depth(column, row);
      }
    }
    Position corner = new Position(origin.x() + west * cell, origin.y() + south * cell);
    return new DepthField(corner, cell, east - west + 1, part);
  }

  private static int first(double index, int count) {
    return (int) held(Math.ceil(index), count - 2);
  }

  private static int last(double index, int count) {
    return Math.max(1, (int) held(Math.floor(index), count - 1));
  }

  private static double held(double value, double most) {
    return Math.min(Math.max(value, 0), most);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DepthField field
        && field.origin.equals(origin)
        && field.cell == cell
        && field.columns == columns
        && Arrays.equals(field.decimetres, decimetres);
  }

  @Override
  public int hashCode() {
    return 31 * origin.hashCode() + Arrays.hashCode(decimetres);
  }
}
