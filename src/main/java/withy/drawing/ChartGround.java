package withy.drawing;

import java.util.List;
import withy.core.geometry.Position;
import withy.core.waterway.Contours;
import withy.core.waterway.DepthField;

/** Land, what dries and what is shallow in tints, with the contours between them. */
final class ChartGround {
  /** Metres below datum of the contours without a tint of their own. */
  private static final double DEEP_CONTOUR = 10;

  private static final double[] LEVELS = {5, 2, 0};

  private ChartGround() {}

  static void draw(SvgWriter svg, ChartSheet sheet, ChartOptions options, ChartInk ink) {
    Box area = sheet.area();
    svg.element(
        "rect",
        "x",
        area.left(),
        "y",
        area.top(),
        "width",
        area.width(),
        "height",
        area.height(),
        "fill",
        ink.depths().get(0));
    if (options.depths()) {
      depths(svg, sheet, ink);
    }
    svg.begin("g", "transform", "scale(.1)", "fill-rule", "evenodd", "stroke", ink.coast());
    contour(svg, sheet, -ChartOptions.HIGH_WATER, ink.depths().get(4), 10);
    svg.end();
  }

  private static void depths(SvgWriter svg, ChartSheet sheet, ChartInk ink) {
    svg.begin("g", "transform", "scale(.1)", "fill-rule", "evenodd", "stroke", ink.line());
    contour(svg, sheet, DEEP_CONTOUR, "none", 6);
    for (int i = 0; i < LEVELS.length; i++) {
      contour(svg, sheet, LEVELS[i], ink.depths().get(i + 1), 7);
    }
    svg.end();
  }

  private static void contour(
      SvgWriter svg, ChartSheet sheet, double level, Object fill, double width) {
    DepthField field = sheet.field();
    List<List<Position>> rings = Contours.shallowerThan(field, level);
    String path = ContourPath.of(rings, sheet);
    if (!path.isEmpty()) {
      svg.element("path", "d", path, "fill", fill, "stroke-width", width);
    }
  }
}
