package withy.drawing;

/** The ring on top of a mooring buoy. */
final class MooringRing {
  static final double HEIGHT = 16;
  private static final double RADIUS = 6.5;

  private MooringRing() {}

  /**
   * Draws a ring on an eye on a body's top.
   *
   * @param post whether a post for a lantern stands in it
   */
  static void draw(SvgWriter svg, double top, boolean post, boolean silhouette) {
    PathData eye = PathData.polygon(-5, top + 3, -3, top - 4, 3, top - 4, 5, top + 3);
    PathData ring = PathData.circle(0, top - HEIGHT + RADIUS + 2, RADIUS);
    Palette ink = silhouette ? Palette.SILHOUETTE : Palette.INK;
    if (post) {
      Pen.band(svg, PathData.line(0, top + 3, 0, top - HEIGHT - 1), ink, 4);
    }
    if (!silhouette) {
      Pen.line(svg, ring, ink, 5.4);
    }
    Pen.line(svg, ring, silhouette ? ink : Palette.GREY, 3);
    Pen.area(svg, eye, silhouette ? ink : Palette.STEEL, ink, 1.3);
  }
}
