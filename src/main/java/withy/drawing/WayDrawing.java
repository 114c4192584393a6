package withy.drawing;

import java.util.List;
import withy.core.geometry.Bearing;

/** The way of a boat on a plan: whole where it is right, dashed where it is wrong. */
final class WayDrawing {
  private WayDrawing() {}

  /** A whole line with the head of an arrow, leaving the boat on her heading. */
  static void right(SvgWriter svg, List<Vec> way, Bearing heading) {
    Pen.line(svg, Passing.smooth(way, heading), Palette.INK, 2.6);
    head(svg, way);
  }

  /** A dashed line that ends in a cross. */
  static void wrong(SvgWriter svg, List<Vec> way, Bearing heading) {
    Pen.dashed(svg, Passing.smooth(way, heading), Palette.INK, 2, "6 4");
    cross(svg, way.get(way.size() - 1));
  }

  private static void head(SvgWriter svg, List<Vec> way) {
    Vec tip = way.get(way.size() - 1);
    Vec back = Passing.end(way).times(-9);
    Vec side = new Vec(-back.y(), back.x()).times(0.5);
    Vec a = tip.plus(back).plus(side);
    Vec b = tip.plus(back).minus(side);
    Vec front = tip.minus(back.times(0.3));
    Pen.area(
        svg,
        PathData.polygon(front.x(), front.y(), a.x(), a.y(), b.x(), b.y()),
        Palette.INK,
        Palette.INK,
        1);
  }

  private static void cross(SvgWriter svg, Vec end) {
    double r = 4.5;
    PathData cross =
        PathData.line(end.x() - r, end.y() - r, end.x() + r, end.y() + r)
            .move(end.x() - r, end.y() + r)
            .line(end.x() + r, end.y() - r);
    Pen.line(svg, cross, Palette.INK, 2.4);
  }
}
