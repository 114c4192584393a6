package withy.drawing;

import withy.core.geometry.Bearing;

/** A round plan, north up, in a compass ring; and the signs that stand on it. */
final class ChartDisc {
  static final double SIZE = 280;
  static final double RADIUS = 114;
  static final Vec MIDDLE = new Vec(SIZE / 2, SIZE / 2);

  private final SvgWriter svg;
  private final double size;

  private ChartDisc(SvgWriter svg, double size) {
    this.svg = svg;
    this.size = size;
  }

  /**
   * Lays the water down.
   *
   * @param size of the signs, 1 in a plan that fills a phone
   */
  static ChartDisc on(SvgWriter svg, double size) {
    svg.element("rect", "width", SIZE, "height", SIZE, "fill", Palette.PAPER);
    svg.element(
        "circle", "cx", MIDDLE.x(), "cy", MIDDLE.y(), "r", RADIUS, "fill", Palette.CHART_WATER);
    return new ChartDisc(svg, size);
  }

  /** The ring with a tick every ten degrees, figures every thirty, letters at the quarters. */
  void ring(Lettering lettering) {
    ticks();
    for (int degrees = 0; degrees < 360; degrees += 30) {
      boolean quarter = degrees % 90 == 0;
      letter(lettering, degrees, quarter ? 15 : 12, quarter ? Palette.INK : Palette.SECOND_INK);
    }
  }

  /** The ring with large letters at the quarters alone, for a plan that shares a phone. */
  void quarters(Lettering lettering) {
    ticks();
    for (int degrees = 0; degrees < 360; degrees += 90) {
      letter(lettering, degrees, 19, Palette.INK);
    }
  }

  private void letter(Lettering lettering, int degrees, double height, Palette ink) {
    Vec at = MIDDLE.plus(Vec.along(Bearing.of(degrees), RADIUS + 16));
    Pen.letters(svg, lettering.bearing(degrees), at, height, ink);
  }

  private void ticks() {
    Pen.circle(svg, MIDDLE, RADIUS, "none", Palette.SECOND_INK, 1);
    PathData ticks = new PathData();
    for (int degrees = 0; degrees < 360; degrees += 10) {
      Bearing bearing = Bearing.of(degrees);
      Vec from = MIDDLE.plus(Vec.along(bearing, RADIUS));
      Vec to = MIDDLE.plus(Vec.along(bearing, RADIUS + (degrees % 30 == 0 ? 7 : 4)));
      ticks.move(from.x(), from.y()).line(to.x(), to.y());
    }
    Pen.line(svg, ticks, Palette.SECOND_INK, 0.9);
  }

  /** The boat from above, with a thin line ahead as far as she is told to look. */
  void boat(Vec at, Bearing heading, double ahead) {
    Vec from = at.plus(Vec.along(heading, 15 * size));
    Vec to = at.plus(Vec.along(heading, ahead));
    if (ahead > 15 * size) {
      Pen.dashed(svg, PathData.line(from.x(), from.y(), to.x(), to.y()), Palette.INK, 0.9, "1.5 3");
    }
    svg.begin("g", "transform", at.turned(heading) + grown());
    hull(svg);
    svg.end();
  }

  /** The boat from above, her bow up. */
  static void hull(SvgWriter svg) {
    PathData hull =
        PathData.at(0, -14)
            .cubic(5.6, -7, 6.4, 1, 5, 11)
            .line(-5, 11)
            .cubic(-6.4, 1, -5.6, -7, 0, -14)
            .close();
    Pen.area(svg, hull, Palette.WHITE, Palette.INK, 1.6);
    Pen.line(svg, PathData.line(-3.4, 3, 3.4, 3), Palette.INK, 1.2);
  }

  private String grown() {
    return size == 1 ? "" : " scale(" + SvgWriter.number(size) + ")";
  }

  /** Where a mark stands; what mark it is, the view shows. */
  void mark(Vec at) {
    Pen.circle(svg, at, 5 * size, Palette.WHITE, Palette.INK, 1.6);
    svg.element("circle", "cx", at.x(), "cy", at.y(), "r", 1.6 * size, "fill", Palette.INK);
  }

  /** The conventional direction of buoyage as charts have it: an open arrow between two rings. */
  void buoyage(Vec at, Bearing direction) {
    BuoyageArrow.draw(svg, at, direction, size, Palette.WHITE, Palette.INK);
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

  /** The angle at the boat between a direction of buoyage and her heading, in whole degrees. */
  void angle(Vec at, Bearing direction, Bearing heading) {
    double turn = heading.relativeTo(direction);
    double radius = 26;
    Vec foot = at.plus(Vec.along(direction, 40));
    Pen.dashed(svg, PathData.line(at.x(), at.y(), foot.x(), foot.y()), Palette.INK, 1.6, "6 3");
    Vec tip = at.plus(Vec.along(heading, 40));
    Pen.line(svg, PathData.line(at.x(), at.y(), tip.x(), tip.y()), Palette.INK, 1.6);
    Vec from = at.plus(Vec.along(direction, radius));
    PathData arc = PathData.at(from.x(), from.y());
    int steps = 12;
    for (int i = 1; i <= steps; i++) {
      Vec next = at.plus(Vec.along(direction.plus(turn * i / steps), radius));
      arc.line(next.x(), next.y());
    }
    Pen.line(svg, arc, Palette.INK, 1.6);
    Vec middle = at.plus(Vec.along(direction.plus(turn / 2), radius + 15));
    svg.element(
        "circle",
        "cx",
        middle.x(),
        "cy",
        middle.y(),
        "r",
        13,
        "fill",
        Palette.CHART_WATER,
        "fill-opacity",
        0.85);
    Pen.letters(svg, Math.round(StrictMath.abs(turn)) + "\u00b0", middle, 14, Palette.INK);
  }

  SvgWriter svg() {
    return svg;
  }
}
