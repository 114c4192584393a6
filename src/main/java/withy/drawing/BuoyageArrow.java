package withy.drawing;

import withy.core.geometry.Bearing;

/** The conventional direction of buoyage as charts have it: an open arrow between two rings. */
final class BuoyageArrow {
  /** From its foot to its tip at size 1. */
  static final double LENGTH = 54;

  static final double WIDTH = 28;

  private BuoyageArrow() {}

  static void draw(
      SvgWriter svg, Vec at, Bearing direction, double size, Palette fill, Palette ink) {
    String grown = size == 1 ? "" : " scale(" + SvgWriter.number(size) + ")";
    svg.begin("g", "transform", at.turned(direction) + grown);
    PathData arrow =
        PathData.polygon(-3.5, 26, 3.5, 26, 3.5, -12, 9, -12, 0, -28, -9, -12, -3.5, -12);
    Pen.area(svg, arrow, fill, ink, 1.3);
    for (double side : new double[] {-1, 1}) {
      Pen.circle(svg, new Vec(side * 10, 6), 3.4, fill, ink, 1.3);
    }
    svg.end();
  }
}
