package withy.drawing;

import withy.core.mark.Symbol;

/** What is painted or fitted on a body or a board: open-faced shapes, an anchor, small signs. */
final class SymbolDrawing {
  private final SvgWriter svg;
  private final Vec middle;
  private final double w;
  private final double h;

  private SymbolDrawing(SvgWriter svg, Vec middle, double width, double height) {
    this.svg = svg;
    this.middle = middle;
    this.w = width / 2;
    this.h = height / 2;
  }

  /**
   * Draws a symbol about its middle inside a width and a height. A diver's flag flies above the
   * body, and the Intracoastal band goes round it; they are not drawn here.
   */
  static void draw(SvgWriter svg, Symbol symbol, Vec middle, double width, double height) {
    double equal = Math.min(width, height);
    SymbolDrawing square = new SymbolDrawing(svg, middle, equal, equal);
    switch (symbol) {
      case DIAMOND -> new SymbolDrawing(svg, middle, width, height).diamond(false);
      case DIAMOND_CROSS -> new SymbolDrawing(svg, middle, width, height).diamond(true);
      case CIRCLE -> square.open(square.circle(square.w - square.stroke() / 2));
      case SQUARE -> square.open(square.box(square.stroke() / 2));
      case ANCHOR -> square.anchor();
      case YELLOW_SQUARE -> square.sign(square.box(0));
      case YELLOW_TRIANGLE -> square.sign(square.triangle());
      case DIVER_FLAG, YELLOW_BAND -> {}
    }
  }

  /** The thickness of the orange line. */
  private double stroke() {
    return Math.max(2.6, Math.min(w, h) * 0.26);
  }

  private void open(PathData shape) {
    Pen.band(svg, shape, Palette.ORANGE, stroke());
  }

  private void diamond(boolean crossed) {
    double inset = stroke() * 0.72;
    double x = w - inset;
    double y = h - inset;
    PathData shape = polygon(0, -y, x, 0, 0, y, -x, 0);
    open(shape);
    if (crossed) {
      Pen.band(svg, at(0, -y, 0, y), Palette.ORANGE, stroke() * 0.8);
      Pen.band(svg, at(-x, 0, x, 0), Palette.ORANGE, stroke() * 0.8);
    }
  }

  private PathData circle(double radius) {
    return PathData.circle(middle.x(), middle.y(), radius);
  }

  private PathData box(double inset) {
    double x = w - inset;
    return polygon(-x, -x, x, -x, x, x, -x, x);
  }

  private PathData triangle() {
    return polygon(0, -h, w, h * 0.8, -w, h * 0.8);
  }

  private void sign(PathData shape) {
    Pen.area(svg, shape, Palette.YELLOW, Palette.INK, 0.9);
  }

  private void anchor() {
    double x = middle.x();
    double y = middle.y();
    double stroke = Math.max(2, h * 0.2);
    double r = w * 0.78;
    PathData iron =
        at(0, -h * 0.56, 0, h * 0.9)
            .move(x - w * 0.5, y - h * 0.3)
            .line(x + w * 0.5, y - h * 0.3)
            .move(x - r, y + h * 0.24)
            .quadratic(x - r * 0.8, y + h * 0.84, x, y + h * 0.9)
            .quadratic(x + r * 0.8, y + h * 0.84, x + r, y + h * 0.24);
    Pen.line(svg, iron, Palette.BLACK, stroke);
    Pen.line(svg, PathData.circle(x, y - h * 0.76, h * 0.18), Palette.BLACK, stroke * 0.7);
    fluke(x - r, y + h * 0.24, -1);
    fluke(x + r, y + h * 0.24, 1);
  }

  private void fluke(double x, double y, double side) {
    double a = w * 0.3;
    PathData fluke =
        PathData.polygon(
            x + side * a * 0.3, y - a, x + side * a * 0.5, y + a * 0.7, x - side * a, y + a * 0.3);
    svg.element("path", "d", fluke, "fill", Palette.BLACK);
  }

  private PathData polygon(double... points) {
    return at(points).close();
  }

  private PathData at(double... points) {
    double[] moved = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      moved[i] = points[i] + (i % 2 == 0 ? middle.x() : middle.y());
    }
    return PathData.line(moved);
  }
}
