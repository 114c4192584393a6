package withy.drawing;

/** The frame of a chart, and below it how long a cable and some hundreds of metres are. */
final class ChartScale {
  private static final double CABLE = 185.2;
  private static final double SIZE = 10;

  private ChartScale() {}

  /** Covers all that runs out of the frame, and draws it. */
  static void frame(SvgWriter svg, ChartSheet sheet, ChartInk ink) {
    Box area = sheet.area();
    PathData rim =
        PathData.polygon(0, 0, sheet.width(), 0, sheet.width(), sheet.height(), 0, sheet.height())
            .append(around(area));
    svg.element("path", "d", rim, "fill", ink.paper(), "fill-rule", "evenodd");
    Pen.line(svg, around(area), ink.words(), 1);
    Pen.line(svg, around(area.grown(2.6)), ink.words(), 0.5);
  }

  private static PathData around(Box box) {
    return PathData.polygon(
        box.left(),
        box.top(),
        box.right(),
        box.top(),
        box.right(),
        box.bottom(),
        box.left(),
        box.bottom());
  }

  static void draw(SvgWriter svg, ChartSheet sheet, Lettering lettering, ChartInk ink) {
    double y = sheet.area().bottom() + 10;
    double half = sheet.area().width() / 2;
    int cables = whole(half - 62, CABLE * sheet.scale());
    bar(svg, new Vec(sheet.area().left() + 2, y), cables, CABLE * sheet.scale(), ink);
    double end = sheet.area().left() + 2 + cables * CABLE * sheet.scale();
    String words = cables + " " + (cables == 1 ? lettering.cable() : lettering.cables());
    words(svg, words, end + 4, y, ink);
    int hundreds = whole(half - 58, 100 * sheet.scale());
    double metres = Type.width(lettering.metres(hundreds * 100.0), SIZE, false);
    double left = sheet.area().right() - metres - 4 - hundreds * 100 * sheet.scale();
    bar(svg, new Vec(left, y), hundreds, 100 * sheet.scale(), ink);
    words(svg, lettering.metres(hundreds * 100.0), sheet.area().right() - metres, y, ink);
  }

  /** How many of a length fit: 1, 2, 5 or 10. */
  private static int whole(double room, double length) {
    int fit = 1;
    for (int each : new int[] {2, 5, 10}) {
      fit = each * length <= room ? each : fit;
    }
    return fit;
  }

  private static void words(SvgWriter svg, String words, double x, double y, ChartInk ink) {
    svg.text(
        words,
        "x",
        x,
        "y",
        y + 4.5,
        "font-size",
        SIZE,
        "font-family",
        Type.FAMILY,
        "fill",
        ink.words());
  }

  /** A bar, every other part of it filled. */
  private static void bar(SvgWriter svg, Vec left, int parts, double length, ChartInk ink) {
    PathData filled = new PathData();
    for (int part = 0; part < parts; part += 2) {
      double x = left.x() + part * length;
      filled.append(around(new Box(x, left.y(), x + length, left.y() + 3)));
    }
    svg.element("path", "d", filled, "fill", ink.words());
    Box whole = new Box(left.x(), left.y(), left.x() + parts * length, left.y() + 3);
    Pen.line(svg, around(whole), ink.words(), 0.7);
  }
}
