package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;

/** Topmarks as small as charts have them, each solid a flat shape. */
final class ChartTopmark {
  private static final double HALF = 3.5;
  private static final double HIGH = 5.4;
  private static final double GAP = 1;

  private ChartTopmark() {}

  /** Draws a topmark over a foot. */
  static void draw(SvgWriter svg, Topmark topmark, double foot) {
    List<Polygon> solids = solids(topmark.shape(), foot - GAP);
    double top = solids.get(solids.size() - 1).top();
    Pen.line(svg, PathData.line(0, foot, 0, top + 2), Palette.INK, 0.9);
    for (int i = 0; i < solids.size(); i++) {
      int fromTop = solids.size() - 1 - i;
      int colour = Math.min(fromTop, topmark.colours().size() - 1);
      Palette fill = Palette.of(topmark.colours().get(colour));
      Pen.area(svg, solids.get(i).path(), fill, Palette.INK, 0.7);
    }
  }

  /** The height of the top over a foot, without drawing. */
  static double top(Topmark topmark, double foot) {
    List<Polygon> solids = solids(topmark.shape(), foot - GAP);
    return solids.get(solids.size() - 1).top();
  }

  private static List<Polygon> solids(TopmarkShape shape, double foot) {
    List<Polygon> solids = new ArrayList<>();
    solids.add(lower(shape, foot));
    double next = solids.get(0).top() - GAP;
    switch (shape) {
      case TWO_SPHERES -> solids.add(ball(next, 2.7));
      case TWO_CONES_UP, TWO_CONES_BASE_TO_BASE -> solids.add(cone(next, true));
      case TWO_CONES_DOWN, TWO_CONES_POINT_TO_POINT -> solids.add(cone(next, false));
      case CAN, CONE_UP, CONE_DOWN, SPHERE, X, UPRIGHT_CROSS -> {}
    }
    return solids;
  }

  private static Polygon lower(TopmarkShape shape, double foot) {
    return switch (shape) {
      case CAN -> Polygon.box(-2.8, foot - 5.6, 2.8, foot);
      case CONE_UP, TWO_CONES_UP, TWO_CONES_POINT_TO_POINT -> cone(foot, true);
      case CONE_DOWN, TWO_CONES_DOWN, TWO_CONES_BASE_TO_BASE -> cone(foot, false);
      case SPHERE -> ball(foot, 3.1);
      case TWO_SPHERES -> ball(foot, 2.7);
      case X -> cross(foot, true);
      case UPRIGHT_CROSS -> cross(foot, false);
    };
  }

  private static Polygon cone(double foot, boolean up) {
    double base = up ? foot : foot - HIGH;
    double point = up ? foot - HIGH : foot;
    return up
        ? Polygon.of(0, point, HALF, base, -HALF, base)
        : Polygon.of(-HALF, base, HALF, base, 0, point);
  }

  static Polygon ball(double foot, double radius) {
    double[] points = new double[32];
    for (int i = 0; i < 16; i++) {
      double angle = StrictMath.PI * i / 8;
      points[2 * i] = radius * StrictMath.sin(angle);
      points[2 * i + 1] = foot - radius - radius * StrictMath.cos(angle);
    }
    return Polygon.of(points);
  }

  private static Polygon cross(double foot, boolean turned) {
    double a = 1.1;
    double r = 3.6;
    double[] upright = {
      -a, -r, a, -r, a, -a, r, -a, r, a, a, a, a, r, -a, r, -a, a, -r, a, -r, -a, -a, -a
    };
    double turn = turned ? StrictMath.sqrt(0.5) : 0;
    double keep = turned ? turn : 1;
    double[] points = new double[upright.length];
    for (int i = 0; i < upright.length; i += 2) {
      points[i] = upright[i] * keep - upright[i + 1] * turn;
      points[i + 1] = foot - r + upright[i] * turn + upright[i + 1] * keep;
    }
    return Polygon.of(points);
  }
}
