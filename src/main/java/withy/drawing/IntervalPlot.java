package withy.drawing;

/** One row of a review: an estimate as a dot, its interval as a whisker, in ink. */
public final class IntervalPlot {
  private static final double WIDTH = 240;
  private static final double HEIGHT = 24;
  private static final double MARGIN = 6;

  private IntervalPlot() {}

  /**
   * A share between 0 and 1 with its interval.
   *
   * @param tolerance the share that is still borne, drawn as a hairline
   * @throws IllegalArgumentException if they are not in the order 0 ≤ lower ≤ rate ≤ upper ≤ 1
   */
  public static Svg of(double lower, double rate, double upper, double tolerance) {
    if (!(0 <= lower && lower <= rate && rate <= upper && upper <= 1)) {
      throw new IllegalArgumentException(
          "no interval: " + lower + " ≤ " + rate + " ≤ " + upper + " within 0 to 1");
    }
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    double y = HEIGHT / 2;
    Pen.line(svg, PathData.line(x(0), y, x(1), y), Palette.HAIRLINE, 1);
    Pen.line(svg, ends(y, 0, 1, 3), Palette.HAIRLINE, 1);
    Pen.line(
        svg, PathData.line(x(tolerance), 1, x(tolerance), HEIGHT - 1), Palette.SECOND_INK, 0.8);
    Pen.line(svg, PathData.line(x(lower), y, x(upper), y), Palette.INK, 1.8);
    Pen.line(svg, ends(y, lower, upper, 4), Palette.INK, 1.8);
    svg.element("circle", "cx", x(rate), "cy", y, "r", 4, "fill", Palette.INK);
    return svg.finish();
  }

  private static PathData ends(double y, double left, double right, double half) {
    return PathData.line(x(left), y - half, x(left), y + half)
        .move(x(right), y - half)
        .line(x(right), y + half);
  }

  private static double x(double share) {
    return MARGIN + share * (WIDTH - 2 * MARGIN);
  }
}
