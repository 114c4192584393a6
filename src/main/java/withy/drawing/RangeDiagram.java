package withy.drawing;

import java.util.List;
import withy.core.light.Intensity;
import withy.core.scenario.RangeLookout;

/**
 * The luminous range of lights, as lists of lights print it: nominal range across, luminous range
 * up, both in nautical miles on a scale of logarithms, and a curve for each visibility.
 */
final class RangeDiagram {
  private static final double WIDTH = 320;
  private static final double HEIGHT = 280;
  private static final double LEFT = 34;
  private static final double RIGHT = 284;
  private static final double TOP = 14;
  private static final double BOTTOM = 250;
  private static final double LEAST = 2;
  private static final double WIDEST = 30;
  private static final double LEAST_UP = 1;
  private static final double MOST_UP = 50;
  private static final List<Integer> ACROSS = List.of(2, 3, 5, 7, 10, 15, 20, 30);
  private static final List<Integer> UP = List.of(1, 2, 3, 5, 7, 10, 15, 20, 30, 50);
  private static final List<Double> VISIBILITIES = List.of(0.5, 1.0, 2.0, 5.0, 10.0, 20.0);

  private final SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
  private final Lettering lettering;

  private RangeDiagram(Lettering lettering) {
    this.lettering = lettering;
  }

  /** The diagram alone: the learner enters it with the light's nominal range. */
  static Svg question(Lettering lettering) {
    RangeDiagram diagram = new RangeDiagram(lettering);
    diagram.grid();
    for (double each : VISIBILITIES) {
      diagram.curve(each, Palette.SECOND_INK, 1.3);
    }
    return diagram.svg.finish();
  }

  /** The same with the way to tonight's luminous range, and dashed the geographic one. */
  static Svg answered(RangeLookout lookout, Lettering lettering) {
    RangeDiagram diagram = new RangeDiagram(lettering);
    diagram.grid();
    for (Double each : VISIBILITIES) {
      if (!each.equals(lookout.visibility())) {
        diagram.curve(each, Palette.SECOND_INK, 1);
      }
    }
    if (lookout.visibility() != null) {
      diagram.curve(lookout.visibility(), Palette.INK, 2.4);
      diagram.reading(lookout.nominalRange(), lookout.luminousRange());
    }
    diagram.horizon(lookout.geographicRange());
    diagram.figures(lookout);
    return diagram.svg.finish();
  }

  private void grid() {
    svg.element("rect", "width", WIDTH, "height", HEIGHT, "fill", Palette.PAPER);
    PathData lines = new PathData();
    for (int each : ACROSS) {
      lines.move(x(each), TOP).line(x(each), BOTTOM);
      Pen.letters(svg, lettering.seconds(each), new Vec(x(each), BOTTOM + 14), 12, Palette.INK);
    }
    for (int each : UP) {
      lines.move(LEFT, y(each)).line(RIGHT, y(each));
      Pen.letters(svg, lettering.seconds(each), new Vec(LEFT - 14, y(each)), 12, Palette.INK);
    }
    Pen.line(svg, lines, Palette.HAIRLINE, 0.8);
    Pen.line(svg, PathData.line(LEFT, TOP, LEFT, BOTTOM, RIGHT, BOTTOM), Palette.INK, 1.2);
  }

  private void curve(double visibility, Palette ink, double width) {
    double widest = WIDEST;
    while (luminous(widest, visibility) > MOST_UP) {
      widest -= 0.5;
    }
    double least = LEAST;
    while (luminous(least, visibility) < LEAST_UP) {
      least += 0.05;
    }
    PathData curve = PathData.at(x(least), y(luminous(least, visibility)));
    for (int i = 1; i <= 24; i++) {
      double nominal = least * StrictMath.pow(widest / least, i / 24.0);
      curve.line(x(nominal), y(luminous(nominal, visibility)));
    }
    Pen.line(svg, curve, ink, width);
    Vec end = new Vec(x(widest) + 15, y(luminous(widest, visibility)));
    Pen.letters(svg, lettering.seconds(visibility), end, 13, Palette.INK);
  }

  private void reading(double nominal, double luminous) {
    PathData way = PathData.line(x(nominal), BOTTOM, x(nominal), y(luminous), LEFT, y(luminous));
    Pen.line(svg, way, Palette.INK, 1.8);
    svg.element("circle", "cx", x(nominal), "cy", y(luminous), "r", 4, "fill", Palette.INK);
  }

  /** Both ranges on their lines, the one that decides in larger figures. */
  private void figures(RangeLookout lookout) {
    double geographic = lookout.geographicRange();
    double luminous = lookout.luminousRange();
    figure(geographic, geographic < luminous);
    figure(luminous, luminous < geographic);
  }

  private void figure(double miles, boolean decides) {
    double size = decides ? 20 : 14;
    Vec middle = new Vec(LEFT + 28, y(miles) + (decides ? 15 : -11));
    svg.element(
        "rect",
        "x",
        middle.x() - 22,
        "y",
        middle.y() - size / 2,
        "width",
        44,
        "height",
        size,
        "fill",
        Palette.PAPER);
    String text = SvgWriter.decimal(Math.round(miles * 10) / 10.0, 10);
    Pen.letters(svg, text.replace('.', lettering.decimalPoint()), middle, size, Palette.INK);
  }

  private void horizon(double geographic) {
    double y = y(geographic);
    Pen.dashed(svg, PathData.line(LEFT, y, RIGHT, y), Palette.INK, 1.8, "6 4");
  }

  private static double luminous(double nominal, double visibility) {
    return Intensity.ofNominalRange(nominal).luminousRange(visibility);
  }

  private static double x(double nominal) {
    return LEFT + (RIGHT - LEFT) * StrictMath.log(nominal / LEAST) / StrictMath.log(WIDEST / LEAST);
  }

  private static double y(double luminous) {
    return BOTTOM
        - (BOTTOM - TOP) * StrictMath.log(luminous / LEAST_UP) / StrictMath.log(MOST_UP / LEAST_UP);
  }
}
