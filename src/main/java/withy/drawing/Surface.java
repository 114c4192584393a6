package withy.drawing;

import java.util.List;

/**
 * The painted side of a body of revolution as the eye sees it. A place on it is a height and a
 * share of the half-width, -1 at the left edge and 1 at the right; level rings sag a little below
 * the height of the eye and arch above it.
 */
record Surface(Profile profile) {
  /** The height of the eye above the water, where the horizon stands behind every mark. */
  static final double EYE = 56;

  private static final double TILT = 0.0011;

  double x(double u, double y) {
    return u * profile.halfWidth(y);
  }

  /** Where a place on the surface is seen. */
  Vec seen(double u, double y) {
    double w = profile.halfWidth(y);
    return new Vec(u * w, seen(w, y, u));
  }

  /** The path round the patch between two heights and two shares of the half-width. */
  PathData patch(double left, double right, double top, double bottom) {
    List<Profile.Piece> sides = profile.between(top, bottom);
    Profile.Piece first = sides.get(0);
    Profile.Piece last = sides.get(sides.size() - 1);
    PathData path = new PathData();
    path.move(right * first.w()[0], seen(first.w()[0], first.y()[0], right));
    sides.forEach(each -> down(path, each, right));
    ring(path, last.w()[3], last.y()[3], right, left);
    for (int i = sides.size() - 1; i >= 0; i--) {
      up(path, sides.get(i), left);
    }
    ring(path, first.w()[0], first.y()[0], left, right);
    return path.close();
  }

  /** The line round the body at a height, from edge to edge. */
  PathData ring(double y) {
    double w = profile.halfWidth(y);
    PathData path = PathData.at(-w, seen(w, y, -1));
    ring(path, w, y, -1, 1);
    return path;
  }

  private static void ring(PathData path, double w, double y, double from, double to) {
    if (w < 0.05) {
      return;
    }
    double sag = sag(w, y);
    path.quadratic((from + to) / 2 * w, y + sag * (1 - from * to), to * w, y + sag * (1 - to * to));
  }

  private static void down(PathData path, Profile.Piece piece, double u) {
    draw(path, piece, u, 1, 2, 3);
  }

  private static void up(PathData path, Profile.Piece piece, double u) {
    draw(path, piece, u, 2, 1, 0);
  }

  private static void draw(PathData path, Profile.Piece piece, double u, int a, int b, int end) {
    double[] w = piece.w();
    double[] y = piece.y();
    if (piece.straight()) {
      path.line(u * w[end], seen(w[end], y[end], u));
    } else {
      path.cubic(
          u * w[a],
          seen(w[a], y[a], u),
          u * w[b],
          seen(w[b], y[b], u),
          u * w[end],
          seen(w[end], y[end], u));
    }
  }

  private static double seen(double w, double y, double u) {
    return y + sag(w, y) * (1 - u * u);
  }

  private static double sag(double w, double y) {
    return TILT * w * (y + EYE);
  }
}
