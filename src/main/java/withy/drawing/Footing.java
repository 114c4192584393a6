package withy.drawing;

/** What a mark stands in or on, drawn in front of its foot. */
enum Footing {
  /** Afloat. */
  WATER,
  /** Driven into the ground under water. */
  BED,
  /** Built on a rock, or on stones heaped up. */
  ROCK,
  /** Stuck into mud that the tide has left. */
  MUD,
  /** On the shore, behind the water. */
  LAND;

  void draw(SvgWriter svg, double halfWidth, boolean near) {
    switch (this) {
      case WATER, BED -> water(svg, halfWidth, near);
      case ROCK -> rock(svg, halfWidth, near);
      case MUD -> mud(svg, halfWidth, near);
      case LAND -> land(svg, halfWidth);
    }
  }

  private static void water(SvgWriter svg, double halfWidth, boolean near) {
    Scenery.wave(svg, halfWidth, near);
    if (near) {
      Scenery.reflection(svg, halfWidth);
      Scenery.ripples(svg, halfWidth);
    }
  }

  /** Grass before the foot. */
  private static void land(SvgWriter svg, double halfWidth) {
    double w = halfWidth + 16;
    PathData grass =
        PathData.at(-w, 14)
            .quadratic(-w * 0.7, 0, -w * 0.3, 1)
            .quadratic(w * 0.2, -3, w * 0.6, 1)
            .quadratic(w * 0.8, 3, w, 14)
            .close();
    svg.element("path", "d", grass, "fill", Palette.NEAR_HILL);
  }

  private static void rock(SvgWriter svg, double halfWidth, boolean near) {
    double w = halfWidth + 20;
    PathData rock =
        PathData.polygon(
            -w, 8, -w * 0.86, -1, -w * 0.6, -6, -w * 0.42, -3, -w * 0.16, -9, w * 0.2, -5, w * 0.44,
            -10, w * 0.74, -4, w, 8);
    if (near) {
      Pen.area(svg, rock, Palette.ROCK, Palette.INK, 1.6);
      PathData shade =
          PathData.polygon(w * 0.2, -5, w * 0.44, -10, w * 0.74, -4, w, 8, w * 0.4, 8, w * 0.3, 0);
      svg.element("path", "d", shade, "fill", Palette.ROCK_SHADE);
      PathData cracks =
          PathData.at(-w * 0.6, -6)
              .line(-w * 0.5, 1)
              .line(-w * 0.56, 6)
              .move(-w * 0.16, -9)
              .line(-w * 0.08, -1)
              .line(-w * 0.2, 5);
      Pen.line(svg, cracks, Palette.INK, 0.9);
    } else {
      svg.element("path", "d", rock, "fill", Palette.SILHOUETTE);
    }
    Scenery.wave(svg, w - 2, near);
    if (near) {
      Scenery.ripples(svg, w - 12);
    }
  }

  private static void mud(SvgWriter svg, double halfWidth, boolean near) {
    double w = halfWidth + 62;
    PathData bank =
        PathData.at(-w, 9)
            .cubic(-w * 0.7, 2, -w * 0.34, -4, 0, -4)
            .cubic(w * 0.3, -4, w * 0.64, 3, w, 10)
            .cubic(w * 0.5, 15, -w * 0.5, 15, -w, 9)
            .close();
    if (!near) {
      svg.element("path", "d", bank, "fill", Palette.SILHOUETTE);
      return;
    }
    svg.element("path", "d", bank, "fill", Palette.MUD);
    Pen.line(svg, gleams(w), Palette.SEA, 1.6);
    Pen.line(svg, shore(w), Palette.DEEP, 1.2);
  }

  private static PathData gleams(double w) {
    return PathData.at(-w * 0.56, 5)
        .quadratic(-w * 0.4, 3, -w * 0.2, 5.4)
        .move(w * 0.16, 2)
        .quadratic(w * 0.34, 1.6, w * 0.46, 5)
        .move(-w * 0.1, 9)
        .quadratic(w * 0.1, 7.6, w * 0.3, 9.4);
  }

  private static PathData shore(double w) {
    return PathData.at(-w, 9).cubic(-w * 0.5, 15, w * 0.5, 15, w, 10);
  }
}
