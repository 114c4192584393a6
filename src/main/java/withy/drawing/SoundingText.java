package withy.drawing;

/**
 * A depth as charts write it: whole metres and below them the decimetres, cut to the shallower
 * side; what dries has a line under its metres.
 */
record SoundingText(int metres, int decimetres, boolean drying) {
  /** Metres from which decimetres are left out. */
  private static final int COARSE = 21;

  /** How large decimetres are beside metres. */
  private static final double SMALL = 0.74;

  static SoundingText of(double depth) {
    int steps = (int) Math.floor(depth * 10 + 1e-6);
    int size = Math.abs(steps);
    boolean coarse = size >= COARSE * 10;
    return new SoundingText(size / 10, coarse ? 0 : size % 10, steps < 0);
  }

  double width(double size) {
    return wholeWidth(size) + (decimetres > 0 ? size * SMALL * 0.56 : 0);
  }

  private double wholeWidth(double size) {
    return Integer.toString(metres).length() * size * 0.56;
  }

  Box box(Vec middle, double size) {
    double low = decimetres > 0 || drying ? size * 0.22 : 0;
    Box figures = Box.around(middle, width(size) + 1, size * 0.8);
    return new Box(figures.left(), figures.top(), figures.right(), figures.bottom() + low);
  }

  /** Writes it into a group that says family and ink. */
  void draw(SvgWriter svg, Vec middle, double size) {
    double left = middle.x() - width(size) / 2;
    double base = middle.y() + size * 0.36;
    svg.begin("text", "x", ChartWords.tenths(left), "y", ChartWords.tenths(base));
    svg.words(Integer.toString(metres));
    if (decimetres > 0) {
      svg.begin("tspan", "dy", 2.4, "font-size", ChartWords.tenths(size * SMALL));
      svg.words(Integer.toString(decimetres));
      svg.end();
    }
    svg.end();
  }

  /** Adds the line under what dries. */
  void underline(PathData lines, Vec middle, double size) {
    double left = middle.x() - width(size) / 2;
    double y = middle.y() + size * 0.36 + 1.6;
    if (drying) {
      lines.move(left, y).line(left + wholeWidth(size), y);
    }
  }
}
