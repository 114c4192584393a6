package withy.drawing;

import java.util.List;
import withy.core.mark.Retroreflector;

/** Pieces of sheeting that shine back in the beam of a torch, on a body or a board. */
final class Sheeting {
  private static final double PIECE = 8;
  private static final double STEP = 11;

  private Sheeting() {}

  /** Below the top of a round body. */
  static void onBody(SvgWriter svg, Surface surface, double top, List<Retroreflector> pieces) {
    for (int i = 0; i < pieces.size(); i++) {
      Retroreflector piece = pieces.get(i);
      double y = top + 7 + STEP * i;
      if (piece.shape() == Retroreflector.Shape.BAND) {
        edged(svg, surface.patch(-1, 1, y, y + PIECE), piece);
      } else {
        edged(svg, shape(piece.shape(), new Vec(0, y + PIECE / 2)), piece);
      }
    }
  }

  /** Along the upper part of a flat board. */
  static void onBoard(SvgWriter svg, Polygon board, List<Retroreflector> pieces) {
    for (int i = 0; i < pieces.size(); i++) {
      Retroreflector piece = pieces.get(i);
      double y = board.top() + 6 + STEP * i;
      if (piece.shape() == Retroreflector.Shape.BAND) {
        edged(svg, board.between(Vec.DOWN, y, y + PIECE).path(), piece);
      } else {
        edged(svg, shape(piece.shape(), new Vec(0, y + PIECE / 2)), piece);
      }
    }
  }

  /** A light edge within a dark one, so that sheeting shows on paint of its own colour. */
  private static void edged(SvgWriter svg, PathData shape, Retroreflector piece) {
    Pen.line(svg, shape, Palette.INK, 2.6);
    Pen.area(svg, shape, Palette.of(piece.colour()), Palette.WHITE, 1.2);
  }

  private static PathData shape(Retroreflector.Shape shape, Vec at) {
    double r = PIECE / 2 + 0.5;
    Vec m = at;
    return switch (shape) {
      case BAND -> Polygon.box(-r * 2, -r, r * 2, r).moved(m.x(), m.y()).path();
      case SQUARE -> Polygon.box(-r, -r, r, r).moved(m.x(), m.y()).path();
      case TRIANGLE -> Polygon.of(0, -r, r, r, -r, r).moved(m.x(), m.y()).path();
      case CROSS -> saltire(m, r);
    };
  }

  private static PathData saltire(Vec m, double r) {
    double a = r * 0.4;
    double[] points = {
      -r, -r + a, -r + a, -r, 0, -a, r - a, -r, r, -r + a, a, 0, r, r - a, r - a, r, 0, a, -r + a,
      r, -r, r - a, -a, 0
    };
    for (int i = 0; i < points.length; i += 2) {
      points[i] += m.x();
      points[i + 1] += m.y();
    }
    return PathData.polygon(points);
  }
}
