package withy.drawing;

/** How large a count is beside the largest one, as a bar in ink. */
public final class CountBar {
  private static final double WIDTH = 120;
  private static final double HEIGHT = 10;

  private CountBar() {}

  /**
   * @param share of the largest count
   * @throws IllegalArgumentException if it is outside 0 to 1
   */
  public static Svg of(double share) {
    if (!(0 <= share && share <= 1)) {
      throw new IllegalArgumentException("a share of " + share + " is outside 0 to 1");
    }
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    Pen.line(svg, PathData.line(0, HEIGHT / 2, WIDTH, HEIGHT / 2), Palette.HAIRLINE, 1);
    Pen.line(svg, PathData.line(0, HEIGHT / 2, share * WIDTH, HEIGHT / 2), Palette.INK, 6);
    return svg.finish();
  }
}
