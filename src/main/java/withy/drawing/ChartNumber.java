package withy.drawing;

/**
 * The number of a mark in the order in which it is met, on a disc, so that nobody takes it for one
 * that the mark bears.
 *
 * @param at the middle of the disc
 */
record ChartNumber(int number, Vec at) {
  static final double WIDTH = 15;

  private static final double SIZE = 11;

  static void draw(SvgWriter svg, ChartNumber number, ChartInk ink) {
    Vec at = number.at();
    Pen.circle(
        svg,
        new Vec(ChartWords.tenths(at.x()), ChartWords.tenths(at.y())),
        WIDTH / 2,
        ink.words(),
        ink.halo(),
        1);
    Pen.bold(svg, Integer.toString(number.number()), at, SIZE, ink.paper());
  }
}
