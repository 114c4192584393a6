package withy.drawing;

/** The data of a path, step by step, in absolute coordinates to a tenth of a unit. */
final class PathData {
  private final StringBuilder data = new StringBuilder();

  static PathData at(double x, double y) {
    return new PathData().move(x, y);
  }

  /** Straight edges through points given as x and y in turn, closed. */
  static PathData polygon(double... points) {
    return line(points).close();
  }

  /** Straight edges through points given as x and y in turn. */
  static PathData line(double... points) {
    PathData path = at(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.line(points[i], points[i + 1]);
    }
    return path;
  }

  static PathData circle(double x, double y, double radius) {
    return at(x - radius, y).arc(radius, x + radius, y).arc(radius, x - radius, y).close();
  }

  PathData move(double x, double y) {
    return step('M', x, y);
  }

  PathData line(double x, double y) {
    return step('L', x, y);
  }

  PathData quadratic(double cx, double cy, double x, double y) {
    return step('Q', cx, cy, x, y);
  }

  PathData cubic(double ax, double ay, double bx, double by, double x, double y) {
    return step('C', ax, ay, bx, by, x, y);
  }

  /** Half a turn or less of a circle, clockwise on the screen. */
  PathData arc(double radius, double x, double y) {
    return arc(radius, x, y, true);
  }

  PathData arc(double radius, double x, double y, boolean clockwise) {
    data.append('A').append(text(radius)).append(' ').append(text(radius));
    data.append(clockwise ? " 0 0 1 " : " 0 0 0 ");
    data.append(text(x)).append(' ').append(text(y));
    return this;
  }

  /** Goes on with the steps of another path. */
  PathData append(PathData other) {
    data.append(other.data);
    return this;
  }

  PathData close() {
    data.append('Z');
    return this;
  }

  private PathData step(char command, double... coordinates) {
    data.append(command);
    for (int i = 0; i < coordinates.length; i++) {
      data.append(i == 0 ? "" : " ").append(text(coordinates[i]));
    }
    return this;
  }

  private static String text(double value) {
    return SvgWriter.decimal(value, 10);
  }

  @Override
  public String toString() {
    return data.toString();
  }
}
