package withy.drawing;

import withy.core.geometry.Bearing;

/** A round plan, north up, in a compass ring; and the signs that stand on it. */
final class ChartDisc {
  static final double SIZE = 280;
  static final double RADIUS = 114;
  static final Vec MIDDLE = new Vec(SIZE / 2, SIZE / 2);

  private final SvgWriter svg;

  private ChartDisc(SvgWriter svg) {
    this.svg = svg;
  }

  /** Lays the water down. */
  static ChartDisc on(SvgWriter svg) {
    svg.element("rect", "width", SIZE, "height", SIZE, "fill", Palette.PAPER);
    svg.element(
        "circle", "cx", MIDDLE.x(), "cy", MIDDLE.y(), "r", RADIUS, "fill", Palette.CHART_WATER);
    return new ChartDisc(svg);
  }

  /** The ring with a tick every ten degrees and the letters of the quarters. */
  void ring(Lettering lettering) {
    svg.element(
        "circle",
        "cx",
        MIDDLE.x(),
        "cy",
        MIDDLE.y(),
        "r",
        RADIUS,
        "fill",
        "none",
        "stroke",
        Palette.SECOND_INK,
        "stroke-width",
        1);
    PathData ticks = new PathData();
    for (int degrees = 0; degrees < 360; degrees += 10) {
      Bearing bearing = Bearing.of(degrees);
      Vec from = MIDDLE.plus(Vec.along(bearing, RADIUS));
      Vec to = MIDDLE.plus(Vec.along(bearing, RADIUS + (degrees % 30 == 0 ? 7 : 4)));
      ticks.move(from.x(), from.y()).line(to.x(), to.y());
      if (degrees % 30 == 0) {
        Vec at = MIDDLE.plus(Vec.along(bearing, RADIUS + 16));
        Pen.letters(svg, lettering.bearing(degrees), at, degrees % 90 == 0 ? 14 : 10, ink(degrees));
      }
    }
    Pen.line(svg, ticks, Palette.SECOND_INK, 0.9);
  }

  private static Palette ink(int degrees) {
    return degrees % 90 == 0 ? Palette.INK : Palette.SECOND_INK;
  }

  /** The boat from above, with a thin line ahead as far as she is told to look. */
  void boat(Vec at, Bearing heading, double ahead) {
    Vec from = at.plus(Vec.along(heading, 15));
    Vec to = at.plus(Vec.along(heading, ahead));
    if (ahead > 15) {
      Pen.dashed(svg, PathData.line(from.x(), from.y(), to.x(), to.y()), Palette.INK, 0.9, "1.5 3");
    }
    svg.begin("g", "transform", at.turned(heading));
    PathData hull =
        PathData.at(0, -14)
            .cubic(5.6, -7, 6.4, 1, 5, 11)
            .line(-5, 11)
            .cubic(-6.4, 1, -5.6, -7, 0, -14)
            .close();
    Pen.area(svg, hull, Palette.WHITE, Palette.INK, 1.6);
    Pen.line(svg, PathData.line(-3.4, 3, 3.4, 3), Palette.INK, 1.2);
    svg.end();
  }

  /** Where a mark stands; what mark it is, the view shows. */
  void mark(Vec at) {
    svg.element(
        "circle",
        "cx",
        at.x(),
        "cy",
        at.y(),
        "r",
        5,
        "fill",
        Palette.WHITE,
        "stroke",
        Palette.INK,
        "stroke-width",
        1.6);
    svg.element("circle", "cx", at.x(), "cy", at.y(), "r", 1.6, "fill", Palette.INK);
  }

  /** The conventional direction of buoyage as charts have it: an open arrow between two rings. */
  void buoyage(Vec at, Bearing direction) {
    svg.begin("g", "transform", at.turned(direction));
    PathData arrow =
        PathData.polygon(-3.5, 26, 3.5, 26, 3.5, -12, 9, -12, 0, -28, -9, -12, -3.5, -12);
    Pen.area(svg, arrow, Palette.WHITE, Palette.INK, 1.3);
    for (double side : new double[] {-1, 1}) {
      svg.element(
          "circle",
          "cx",
          side * 10,
          "cy",
          6,
          "r",
          3.4,
          "fill",
          Palette.WHITE,
          "stroke",
          Palette.INK,
          "stroke-width",
          1.3);
    }
    svg.end();
  }

  /** Foul ground: a dotted danger line round rocks. */
  void foul(Vec at, double radius) {
    svg.element(
        "circle",
        "cx",
        at.x(),
        "cy",
        at.y(),
        "r",
        radius,
        "fill",
        Palette.SHOAL,
        "stroke",
        Palette.INK,
        "stroke-width",
        1,
        "stroke-dasharray",
        "1.5 2.5");
    PathData rocks = new PathData();
    double[][] places = {{-0.4, -0.25}, {0.42, -0.1}, {-0.05, 0.45}};
    for (double[] each : places) {
      double x = at.x() + each[0] * radius;
      double y = at.y() + each[1] * radius;
      rocks.move(x - 3, y).line(x + 3, y).move(x, y - 3).line(x, y + 3);
    }
    Pen.line(svg, rocks, Palette.INK, 1);
  }

  SvgWriter svg() {
    return svg;
  }
}
