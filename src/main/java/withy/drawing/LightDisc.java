package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;

/**
 * A light at its true rhythm: a small disc with a soft edge, in CSS pixels wherever it stands, so
 * that it never grows with the screen.
 */
final class LightDisc {
  /** Of the disc with its soft edge, in CSS pixels. */
  static final double RADIUS = 20;

  private static final double[][] RINGS = {
    {RADIUS, 0.02},
    {17.6, 0.03},
    {15.3, 0.04},
    {13.2, 0.06},
    {11.2, 0.09},
    {9.5, 0.13},
    {8, 0.2},
    {6.5, 0.4},
    {5.2, 1}
  };

  /** Of a small disc: shares of its radius, and how bright. */
  private static final double[][] DOT = {{1, 0.1}, {0.8, 0.18}, {0.62, 0.35}, {0.48, 1}};

  /** How bright the steady part of a fixed and flashing light is beside its flashes. */
  private static final double LOW = 0.5;

  private LightDisc() {}

  /** Draws a light in an unscaled picture at shares of its width and height. */
  static void draw(SvgWriter svg, LightTimeline timeline, double across, double down) {
    draw(svg, timeline, across, down, RADIUS);
  }

  /**
   * Draws a light smaller than one alone.
   *
   * @param radius of the disc with its soft edge, in CSS pixels
   */
  static void draw(
      SvgWriter svg, LightTimeline timeline, double across, double down, double radius) {
    svg.begin("svg", "x", percent(across), "y", percent(down), "overflow", "visible");
    shine(svg, "fill", timeline);
    for (double[] ring : RINGS) {
      svg.element("circle", "r", ring[0] * radius / RADIUS, "fill-opacity", ring[1]);
    }
    svg.end().end();
  }

  /**
   * Draws a light in a scaled picture, where it keeps its size all the same: lines of no length,
   * whose round ends do not grow with the picture.
   *
   * @param radius of the disc with its soft edge, in CSS pixels
   */
  static void dot(SvgWriter svg, LightTimeline timeline, Vec at, double radius) {
    shine(svg, "stroke", timeline);
    String place = PathData.at(at.x(), at.y()) + "h0";
    for (double[] ring : DOT) {
      svg.element(
          "path",
          "d",
          place,
          "stroke-linecap",
          "round",
          "stroke-width",
          2 * radius * ring[0],
          "stroke-opacity",
          ring[1],
          "vector-effect",
          "non-scaling-stroke");
    }
    svg.end();
  }

  /** Opens a group that lights up and darkens at the rhythm of a timeline. */
  private static void shine(SvgWriter svg, String paint, LightTimeline timeline) {
    List<Phase> phases = timeline.phases();
    svg.begin("g", paint, fill(firstLit(phases)), "opacity", opacity(phases.get(0), phases));
    if (!timeline.fixed()) {
      animate(svg, "opacity", timeline, each -> opacity(each, phases));
      if (phases.stream().map(Phase::colour).filter(c -> c != null).distinct().count() > 1) {
        animate(svg, paint, timeline, LightDisc::fill);
      }
    }
  }

  private static void animate(
      SvgWriter svg, String attribute, LightTimeline timeline, Function<Phase, String> shown) {
    double period = timeline.periodMillis().orElseThrow();
    List<String> values = new ArrayList<>();
    List<String> times = new ArrayList<>();
    double elapsed = 0;
    for (Phase each : timeline.phases()) {
      values.add(shown.apply(each));
      times.add(SvgWriter.decimal(elapsed / period, 1_000_000));
      elapsed += each.millis();
    }
    svg.element(
        "animate",
        "attributeName",
        attribute,
        "calcMode",
        "discrete",
        "values",
        String.join(";", values),
        "keyTimes",
        String.join(";", times),
        "dur",
        SvgWriter.decimal(period / 1000, 1000) + "s",
        "repeatCount",
        "indefinite");
  }

  private static Phase firstLit(List<Phase> phases) {
    return phases.stream().filter(each -> !each.dark()).findFirst().orElse(phases.get(0));
  }

  private static String opacity(Phase phase, List<Phase> all) {
    boolean brighter = all.stream().anyMatch(Phase::high);
    return phase.dark() ? "0" : SvgWriter.number(brighter && !phase.high() ? LOW : 1);
  }

  /** The colour of a phase; an eclipse shows none, whatever it is. */
  private static String fill(Phase phase) {
    LightColour colour = phase.colour();
    return (colour == null ? Palette.WHITE_LIGHT : Palette.of(colour)).toString();
  }

  private static String percent(double share) {
    return SvgWriter.number(share * 100) + "%";
  }
}
