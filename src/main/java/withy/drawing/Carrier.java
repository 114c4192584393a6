package withy.drawing;

import withy.core.mark.Structure;

/**
 * An unpainted structure that carries a board.
 *
 * @param top height of its head
 */
record Carrier(Structure structure, double top) {
  private static final double PILE = 5.5;

  double halfWidth() {
    return structure == Structure.LATTICE ? Framework.FOOT : width(0);
  }

  Footing footing() {
    return switch (structure) {
      case TOWER, LATTICE -> Footing.ROCK;
      default -> Footing.BED;
    };
  }

  void paint(SvgWriter svg) {
    if (structure == Structure.LATTICE) {
      new Framework(svg, top).draw(y -> Palette.STEEL, true);
      return;
    }
    Palette fill = structure == Structure.TOWER ? Palette.GREY : Palette.TIMBER;
    Surface surface = new Surface(profile());
    svg.element("path", "d", surface.patch(-1, 1, top, 9), "fill", fill);
    shade(svg, surface, 0.3, 1, top);
    shade(svg, surface, -1, 1, -7);
    Pen.line(svg, surface.patch(-1, 1, top, 9), Palette.INK, 1.6);
  }

  private static void shade(SvgWriter svg, Surface surface, double left, double right, double top) {
    PathData shade = surface.patch(left, right, top, 9);
    svg.element("path", "d", shade, "fill", Palette.INK, "fill-opacity", 0.2);
  }

  void silhouette(SvgWriter svg) {
    if (structure == Structure.LATTICE) {
      new Framework(svg, top).draw(y -> Palette.SILHOUETTE, false);
    } else {
      PathData shape = new Surface(profile()).patch(-1, 1, top, 9);
      svg.element("path", "d", shape, "fill", Palette.SILHOUETTE);
    }
  }

  private Profile profile() {
    return Profile.from(width(top), top).line(width(9), 9);
  }

  private double width(double y) {
    return structure == Structure.TOWER ? 20 + y * 0.06 : PILE + y * 0.006;
  }
}
