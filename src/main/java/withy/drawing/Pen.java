package withy.drawing;

/** The lines of plans and plots. */
final class Pen {
  private Pen() {}

  static void line(SvgWriter svg, PathData path, Palette ink, double width) {
    svg.element(
        "path",
        "d",
        path,
        "fill",
        "none",
        "stroke",
        ink,
        "stroke-width",
        width,
        "stroke-linecap",
        "round",
        "stroke-linejoin",
        "round");
  }

  /** A broad line cut off square at its ends. */
  static void band(SvgWriter svg, PathData path, Palette ink, double width) {
    svg.element("path", "d", path, "fill", "none", "stroke", ink, "stroke-width", width);
  }

  static void dashed(SvgWriter svg, PathData path, Palette ink, double width, String dashes) {
    svg.element(
        "path",
        "d",
        path,
        "fill",
        "none",
        "stroke",
        ink,
        "stroke-width",
        width,
        "stroke-dasharray",
        dashes);
  }

  /** An area with an outline. */
  static void area(SvgWriter svg, PathData path, Palette fill, Palette ink, double width) {
    svg.element(
        "path",
        "d",
        path,
        "fill",
        fill,
        "stroke",
        ink,
        "stroke-width",
        width,
        "stroke-linejoin",
        "round");
  }

  /**
   * A disc or a ring.
   *
   * @param fill a colour, or the word for none
   */
  static void circle(
      SvgWriter svg, Vec middle, double radius, Object fill, Palette ink, double width) {
    svg.element(
        "circle",
        "cx",
        middle.x(),
        "cy",
        middle.y(),
        "r",
        radius,
        "fill",
        fill,
        "stroke",
        ink,
        "stroke-width",
        width);
  }

  /** The number or letter of a mark. */
  static void bold(SvgWriter svg, String words, Vec middle, double size, Palette ink) {
    svg.text(
        words,
        "x",
        middle.x(),
        "y",
        middle.y() + size * 0.36,
        "font-size",
        size,
        "font-weight",
        700,
        "font-family",
        Type.FAMILY,
        "text-anchor",
        "middle",
        "fill",
        ink);
  }

  static void letters(SvgWriter svg, String words, Vec middle, double size, Palette ink) {
    svg.text(
        words,
        "x",
        middle.x(),
        "y",
        middle.y() + size * 0.35,
        "font-size",
        size,
        "font-family",
        Type.FAMILY,
        "text-anchor",
        "middle",
        "fill",
        ink);
  }
}
