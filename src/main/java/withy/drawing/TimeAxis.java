package withy.drawing;

/**
 * Seconds below the strip of a light.
 *
 * @param scale units a millisecond
 * @param size of the figures
 */
record TimeAxis(SvgWriter svg, double scale, Lettering lettering, double size) {
  private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20, 60};

  /** Draws marks and figures from the left to the right end of a bar, below its foot. */
  void draw(double left, double right, double foot) {
    double end = (right - left) / scale / 1000;
    double step = STEPS[STEPS.length - 1];
    for (int i = STEPS.length - 1; i >= 0 && STEPS[i] * 1000 * scale >= 2.2 * size; i--) {
      step = STEPS[i];
    }
    for (int i = 0; i * step < end + 1e-9; i++) {
      tick(i * step, left, foot);
    }
    if (end / step - Math.floor(end / step + 1e-9) > 0.6) {
      tick(end, left, foot);
    }
    figure(lettering.seconds(), right + 25, foot);
  }

  private void tick(double seconds, double left, double foot) {
    double x = left + seconds * 1000 * scale;
    Pen.band(svg, PathData.line(x, foot, x, foot + 5), Palette.NIGHT_INK, 1);
    figure(lettering.seconds(seconds), x, foot);
  }

  private void figure(String words, double x, double foot) {
    Pen.letters(svg, words, new Vec(x, foot + 6 + size * 0.37), size, Palette.NIGHT_INK);
  }
}
