package withy.drawing;

/** The lantern of a lit mark: a glass under a cap, on the top of the body. */
final class Lantern {
  private static final double WIDTH = 10;
  static final double HEIGHT = 11;

  private Lantern() {}

  /** Draws a lantern on a body's top and says where its own top is. */
  static double draw(SvgWriter svg, double foot, boolean silhouette) {
    double w = WIDTH / 2;
    double top = foot - HEIGHT;
    PathData glass = PathData.polygon(-w, foot, w, foot, w, top + 3, -w, top + 3);
    PathData cap = PathData.polygon(-w - 1, top + 3, w + 1, top + 3, w - 2, top, -w + 2, top);
    if (silhouette) {
      svg.element("path", "d", glass + cap.toString(), "fill", Palette.SILHOUETTE);
    } else {
      inked(svg, glass, Palette.LANTERN);
      inked(svg, cap, Palette.SECOND_INK);
    }
    return top;
  }

  private static void inked(SvgWriter svg, PathData path, Palette fill) {
    svg.element(
        "path",
        "d",
        path,
        "fill",
        fill,
        "stroke",
        Palette.INK,
        "stroke-width",
        1.4,
        "stroke-linejoin",
        "round");
  }
}
