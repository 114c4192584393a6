package withy.drawing;

/** The boat's own deck along the lower edge of what is seen from it. */
enum Deck {
  DAY(Palette.PAPER, Palette.INK, Palette.HAIRLINE),
  NIGHT(Palette.NIGHT, Palette.NIGHT_HORIZON, Palette.NIGHT_SEA);

  private static final double WIDTH = MarkDrawing.WIDTH;
  private static final double HEIGHT = MarkDrawing.HEIGHT;

  private final Palette planks;
  private final Palette ink;
  private final Palette seam;

  Deck(Palette planks, Palette ink, Palette seam) {
    this.planks = planks;
    this.ink = ink;
    this.seam = seam;
  }

  /** The foredeck running to the stem, with its rail. */
  void bow(SvgWriter svg) {
    double m = WIDTH / 2;
    PathData shape =
        PathData.at(m, 216)
            .cubic(m + 34, 226, m + 74, 250, m + 96, HEIGHT + 2)
            .line(m - 96, HEIGHT + 2)
            .cubic(m - 74, 250, m - 34, 226, m, 216)
            .close();
    Pen.area(svg, shape, planks, ink, 1.8);
    PathData rail =
        PathData.at(m, 224)
            .cubic(m + 30, 232, m + 64, 254, m + 84, HEIGHT)
            .move(m, 224)
            .cubic(m - 30, 232, m - 64, 254, m - 84, HEIGHT);
    Pen.line(svg, rail, seam, 1.4);
    Pen.area(svg, hatch(m), planks, ink, 1.2);
    PathData pulpit =
        PathData.at(m - 62, 252)
            .line(m - 62, 232)
            .cubic(m - 40, 208, m - 16, 200, m, 200)
            .cubic(m + 16, 200, m + 40, 208, m + 62, 232)
            .line(m + 62, 252)
            .move(m - 26, 224)
            .line(m - 26, 205)
            .move(m + 26, 224)
            .line(m + 26, 205);
    Pen.line(svg, pulpit, ink, 1.7);
  }

  private static PathData hatch(double m) {
    return PathData.at(m - 17, 256)
        .line(m + 17, 256)
        .line(m + 22, HEIGHT + 2)
        .line(m - 22, HEIGHT + 2)
        .close();
  }

  /** The stern with its rail, and the wake that runs straight away from it to the horizon. */
  void stern(SvgWriter svg, double horizon) {
    double m = WIDTH / 2;
    wake(svg, horizon);
    PathData shape =
        PathData.at(m - 118, HEIGHT)
            .cubic(m - 112, 250, m - 100, 240, m - 84, 237)
            .quadratic(m, 230, m + 84, 237)
            .cubic(m + 100, 240, m + 112, 250, m + 118, HEIGHT)
            .close();
    Pen.area(svg, shape, planks, ink, 1.8);
    PathData rail =
        PathData.at(m - 106, 252)
            .line(m - 104, 222)
            .quadratic(m - 60, 214, m - 26, 212)
            .move(m + 106, 252)
            .line(m + 104, 222)
            .quadratic(m + 60, 214, m + 26, 212)
            .move(m - 62, 240)
            .line(m - 62, 216)
            .move(m - 26, 236)
            .line(m - 26, 212)
            .move(m + 62, 240)
            .line(m + 62, 216)
            .move(m + 26, 236)
            .line(m + 26, 212);
    Pen.line(svg, rail, ink, 1.7);
    tiller(svg, m);
  }

  private void tiller(SvgWriter svg, double m) {
    PathData head = PathData.polygon(m - 6, 228, m + 6, 228, m + 5, 244, m - 5, 244);
    Pen.area(svg, head, planks, ink, 1.4);
    PathData tiller = PathData.polygon(m - 3, 240, m + 3, 240, m + 4.5, HEIGHT, m - 4.5, HEIGHT);
    Pen.area(svg, tiller, seam, ink, 1.2);
  }

  private void wake(SvgWriter svg, double horizon) {
    double m = WIDTH / 2;
    PathData foam =
        PathData.at(m - 30, 232)
            .quadratic(m - 12, 190, m - 3, horizon + 12)
            .move(m + 30, 232)
            .quadratic(m + 12, 190, m + 3, horizon + 12)
            .move(m - 10, 226)
            .quadratic(m - 16, 212, m - 8, 200)
            .move(m + 10, 220)
            .quadratic(m + 15, 206, m + 6, 192);
    Pen.line(svg, foam, this == DAY ? Palette.WHITE : seam, 2.2);
  }
}
