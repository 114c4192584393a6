package withy.drawing;

/** Sky, sea and what the sea does round a body that stands in it. */
final class Scenery {
  private Scenery() {}

  /** A calm day: flat sky and sea, a far low shore, the same behind every mark. */
  static void day(SvgWriter svg, double width, double height, double horizon) {
    box(svg, 0, width, horizon, Palette.SKY);
    box(svg, horizon, width, height - horizon, Palette.SEA);
    box(svg, horizon, width, 9, Palette.FAR_SEA);
    svg.element("path", "d", shore(width, horizon), "fill", Palette.FAR_LAND);
  }

  /** A dark night: black-blue paper, the horizon one step lighter. */
  static void night(SvgWriter svg, double width, double height, double horizon) {
    box(svg, 0, width, horizon, Palette.NIGHT);
    box(svg, horizon, width, height - horizon, Palette.NIGHT_SEA);
    box(svg, horizon - 0.75, width, 1.5, Palette.NIGHT_HORIZON);
  }

  private static void box(SvgWriter svg, double y, double width, double height, Palette fill) {
    svg.element("rect", "x", 0, "y", y, "width", width, "height", height, "fill", fill);
  }

  private static PathData shore(double width, double horizon) {
    return PathData.at(0, horizon)
        .line(0, horizon - 7)
        .cubic(width * 0.1, horizon - 10, width * 0.2, horizon - 8, width * 0.27, horizon - 4)
        .cubic(width * 0.31, horizon - 2, width * 0.36, horizon - 1, width * 0.42, horizon)
        .move(width * 0.74, horizon)
        .cubic(width * 0.82, horizon - 2, width * 0.86, horizon - 5, width, horizon - 6)
        .line(width, horizon)
        .close();
  }

  /** A quiet broken reflection below a body of a half-width. */
  static void reflection(SvgWriter svg, double halfWidth) {
    double w = halfWidth;
    PathData path =
        PathData.at(-w * 0.94, 6)
            .quadratic(-w * 0.6, 8.6, -w * 0.3, 6.4)
            .quadratic(w * 0.02, 4.6, w * 0.3, 6.6)
            .quadratic(w * 0.62, 8.4, w * 0.94, 5.8)
            .quadratic(w * 1.02, 9.5, w * 0.7, 10.5)
            .quadratic(w * 0.92, 12.5, w * 0.52, 14)
            .quadratic(w * 0.7, 16.5, w * 0.3, 18)
            .quadratic(w * 0.02, 20.5, -w * 0.3, 18.4)
            .quadratic(-w * 0.56, 17.4, -w * 0.44, 15.4)
            .quadratic(-w * 0.86, 14, -w * 0.68, 11.4)
            .quadratic(-w * 1.04, 10, -w * 0.94, 6)
            .close();
    svg.element("path", "d", path, "fill", Palette.DEEP, "fill-opacity", 0.24);
  }

  /** The waved edge of the water in front of a body of a half-width. */
  static void wave(SvgWriter svg, double halfWidth, boolean near) {
    double w = halfWidth + (near ? 9 : 4);
    PathData edge = edge(w);
    svg.element("path", "d", edge(w).line(w, 16).line(-w, 16).close(), "fill", Palette.SEA);
    if (near) {
      svg.element(
          "path",
          "d",
          edge,
          "fill",
          "none",
          "stroke",
          Palette.DEEP,
          "stroke-width",
          1.5,
          "stroke-linecap",
          "round");
    }
  }

  private static PathData edge(double w) {
    return PathData.at(-w, 1.5)
        .quadratic(-w * 0.8, 3.4, -w * 0.58, 1.6)
        .quadratic(-w * 0.36, -0.4, -w * 0.14, 2)
        .quadratic(w * 0.1, 4.6, w * 0.34, 2)
        .quadratic(w * 0.56, -0.2, w * 0.76, 1.8)
        .quadratic(w * 0.9, 3, w, 1.4);
  }

  /** A few short ripples. */
  static void ripples(SvgWriter svg, double halfWidth) {
    ripple(svg, -halfWidth - 22, 10, 26);
    ripple(svg, halfWidth + 2, 16, 24);
    ripple(svg, -halfWidth + 4, 22, 20);
  }

  private static void ripple(SvgWriter svg, double x, double y, double length) {
    double q = length / 4;
    PathData path =
        PathData.at(x, y)
            .quadratic(x + q, y + 3, x + 2 * q, y)
            .quadratic(x + 3 * q, y - 2, x + 4 * q, y + 0.6);
    svg.element(
        "path",
        "d",
        path,
        "fill",
        "none",
        "stroke",
        Palette.RIPPLE,
        "stroke-width",
        1.4,
        "stroke-linecap",
        "round");
  }
}
