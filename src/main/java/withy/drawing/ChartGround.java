package withy.drawing;

/** Land, what dries and what is shallow in tints, with the contours between them. */
final class ChartGround {
  private ChartGround() {}

  static void draw(
      SvgWriter svg, ChartSheet sheet, ChartContours contours, ChartOptions options, ChartInk ink) {
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
      depths(svg, sheet, contours, ink);
    }
    svg.begin("g", "transform", "scale(.1)", "fill-rule", "evenodd", "stroke", ink.coast());
    contour(svg, sheet, contours, -ChartOptions.HIGH_WATER, ink.depths().get(4), 10);
    svg.end();
  }

  /** The deepest contour has no tint of its own. */
  private static void depths(
      SvgWriter svg, ChartSheet sheet, ChartContours contours, ChartInk ink) {
    svg.begin("g", "transform", "scale(.1)", "fill-rule", "evenodd", "stroke", ink.line());
    int deepest = ChartContours.LEVELS.size() - 1;
    for (int i = deepest; i >= 0; i--) {
      Object fill = i == deepest ? "none" : ink.depths().get(deepest - i);
      contour(svg, sheet, contours, ChartContours.LEVELS.get(i), fill, i == deepest ? 6 : 7);
    }
    svg.end();
  }

  private static void contour(
      SvgWriter svg,
      ChartSheet sheet,
      ChartContours contours,
      double level,
      Object fill,
      double width) {
    String path = ContourPath.of(contours.shallowerThan(level), sheet);
    if (!path.isEmpty()) {
      svg.element("path", "d", path, "fill", fill, "stroke-width", width);
    }
  }
}
