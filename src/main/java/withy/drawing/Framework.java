package withy.drawing;

import java.util.function.DoubleFunction;

/** An open framework on two legs that the eye sees, braced crosswise. */
record Framework(SvgWriter svg, double top) {
  /** Half the width at the foot. */
  static final double FOOT = 24;

  private static final double HEAD = 9;
  private static final int BAYS = 4;
  private static final double BAR = 3;

  /** Draws the bars in colours by height; near adds a thin dark edge to them. */
  void draw(DoubleFunction<Palette> colour, boolean near) {
    if (near) {
      for (int bay = 0; bay < BAYS; bay++) {
        Pen.line(svg, bars(bay), Palette.INK, BAR + 1.8);
      }
    }
    for (int bay = 0; bay < BAYS; bay++) {
      Pen.line(svg, bars(bay), colour.apply((height(bay) + height(bay + 1)) / 2), BAR);
    }
    platform(colour.apply(top), near);
  }

  double height(int bay) {
    return top + (3 - top) * bay / BAYS;
  }

  private PathData bars(int bay) {
    double y = bay == 0 ? top + 3 : height(bay);
    double below = height(bay + 1);
    double w = half(y);
    double v = half(below);
    return PathData.line(-w, y, -v, below)
        .move(w, y)
        .line(v, below)
        .move(-w, y)
        .line(v, below)
        .move(w, y)
        .line(-v, below)
        .move(-v, below)
        .line(v, below);
  }

  private void platform(Palette fill, boolean near) {
    PathData deck = PathData.polygon(-14, top, 14, top, 14, top + 4, -14, top + 4);
    if (near) {
      Pen.area(svg, deck, fill, Palette.INK, 1.4);
    } else {
      svg.element("path", "d", deck, "fill", fill);
    }
  }

  private double half(double y) {
    return HEAD + (FOOT - HEAD) * (y - top) / (3 - top);
  }
}
