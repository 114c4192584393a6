package withy.drawing;

import java.util.List;
import withy.core.geometry.Bearing;

/** Boats on a chart: their ways, one of them where she is, and where keels met the ground. */
final class ChartTracks {
  private static final double BOAT = 0.8;
  private static final double AHEAD = 34;
  private static final double CROSS = 4.6;
  private static final double DISC = 8;
  private static final double RING = 13;

  private ChartTracks() {}

  static Box touch(Vec at) {
    return Box.around(at, 2 * CROSS + 2, 2 * CROSS + 2);
  }

  /** A whole line for the safe way, dashes for others, over a thin light edge. */
  static void way(SvgWriter svg, List<List<Vec>> parts, boolean safe, ChartInk ink) {
    PathData path = path(parts);
    Pen.line(svg, path, ink.halo(), safe ? 4.4 : 3.6);
    if (safe) {
      Pen.line(svg, path, ink.words(), 2.4);
    } else {
      Pen.dashed(svg, path, ink.words(), 1.7, "6 4");
    }
  }

  /** One of several ways that look alike. */
  static void lettered(SvgWriter svg, List<List<Vec>> parts, ChartInk ink) {
    PathData path = path(parts);
    Pen.line(svg, path, ink.halo(), 3.6);
    Pen.line(svg, path, ink.words(), 1.5);
  }

  /** A letter on a disc, on a way near the edge of the chart. */
  static void letter(SvgWriter svg, String letter, Vec at, Box area, ChartInk ink) {
    Box room = area.grown(-DISC - 2);
    double x = Math.max(room.left(), Math.min(room.right(), at.x()));
    double y = Math.max(room.top(), Math.min(room.bottom(), at.y()));
    Vec in = new Vec(x, y);
    Pen.area(svg, PathData.circle(in.x(), in.y(), DISC), ink.paper(), ink.words(), 1);
    double width = Type.width(letter, ChartLabel.SIZE + 1, true);
    ChartWords.begin(svg, ChartLabel.SIZE + 1, ink.words(), ink.halo());
    ChartWords.write(svg, letter, Box.around(in, width, ChartLabel.LINE), "font-weight", 700);
    svg.end();
  }

  /** Round the mark that is asked about. */
  static void ring(SvgWriter svg, Vec at, ChartInk ink) {
    PathData ring = PathData.circle(at.x(), at.y(), RING);
    Pen.line(svg, ring, ink.halo(), 3.4);
    Pen.line(svg, ring, ink.words(), 1.4);
  }

  static PathData path(List<List<Vec>> parts) {
    PathData path = new PathData();
    for (List<Vec> part : parts) {
      for (int i = 0; i < part.size(); i++) {
        Vec at = part.get(i);
        if (i == 0) {
          path.move(at.x(), at.y());
        } else {
          path.line(at.x(), at.y());
        }
      }
    }
    return path;
  }

  /** The head of an arrow at the end of a way. */
  static void head(SvgWriter svg, List<Vec> way, ChartInk ink) {
    Vec tip = way.get(way.size() - 1);
    Vec leg = tip.minus(way.get(way.size() - 2));
    Vec back = leg.times(-9 / leg.length());
    Vec side = new Vec(-back.y(), back.x()).times(0.48);
    Vec a = tip.plus(back).plus(side);
    Vec b = tip.plus(back).minus(side);
    PathData head = PathData.polygon(tip.x(), tip.y(), a.x(), a.y(), b.x(), b.y());
    Pen.area(svg, head, ink.words(), ink.words(), 0.8);
  }

  static void boat(SvgWriter svg, Vec at, Bearing heading, ChartInk ink) {
    Vec from = at.plus(Vec.along(heading, 12));
    Vec to = at.plus(Vec.along(heading, AHEAD));
    PathData ahead = PathData.line(from.x(), from.y(), to.x(), to.y());
    Pen.dashed(svg, ahead, ink.words(), 1, "1.5 2.5");
    svg.begin("g", "transform", at.turned(heading) + " scale(" + SvgWriter.number(BOAT) + ")");
    ChartDisc.hull(svg);
    svg.end();
  }

  static void cross(SvgWriter svg, Vec at, ChartInk ink) {
    PathData cross =
        PathData.line(at.x() - CROSS, at.y() - CROSS, at.x() + CROSS, at.y() + CROSS)
            .move(at.x() - CROSS, at.y() + CROSS)
            .line(at.x() + CROSS, at.y() - CROSS);
    Pen.line(svg, cross, ink.halo(), 4.6);
    Pen.line(svg, cross, ink.words(), 2.4);
  }
}
