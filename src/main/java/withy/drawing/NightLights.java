package withy.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.light.LightTimeline;

/** Several lights at once along a dark horizon, over a scale of bearings in degrees true. */
public final class NightLights {
  private static final double WIDTH = MarkDrawing.WIDTH;
  private static final double HEIGHT = MarkDrawing.HEIGHT;
  private static final double HORIZON = 168;
  private static final double LIGHT = 128;
  private static final double FIGURES = 18;
  private static final double APART = 48;

  /** Degrees between figures, and between the small marks that stand with each. */
  private static final int[][] STEPS = {
    {5, 1}, {10, 5}, {15, 5}, {20, 5}, {30, 10}, {45, 15}, {60, 20}, {90, 30}
  };

  private static final double EDGE = 20;

  /**
   * A light and where it is seen.
   *
   * @param bearing from the boat, degrees true
   */
  public record Sighted(Bearing bearing, LightTimeline timeline) {}

  private final SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
  private final Bearing from;
  private final double sweep;

  private NightLights(Bearing from, Bearing to) {
    this.from = from;
    double turned = to.degrees() - from.degrees();
    this.sweep = turned > 0 ? turned : turned + 360;
  }

  /**
   * The lights between two bearings, clockwise from the left edge to the right, in whatever order
   * they are given: the picture must not tell which of them is asked about. It has no view box, as
   * {@link MarkDrawing#night}; the more lights, the smaller each, so that all together may flash.
   *
   * @throws IllegalArgumentException if a light lies outside the two bearings
   */
  public static Svg of(List<Sighted> lights, Bearing from, Bearing to, Lettering lettering) {
    NightLights view = new NightLights(from, to);
    NightScene.begin(view.svg, HORIZON);
    view.scale(lettering);
    view.svg.end();
    List<Sighted> across = new ArrayList<>(lights);
    across.sort(Comparator.comparingDouble(each -> view.across(each.bearing())));
    for (Sighted each : across) {
      LightDisc.draw(
          view.svg,
          each.timeline(),
          view.across(each.bearing()) / WIDTH,
          LIGHT / HEIGHT,
          FlashSafety.radius(lights.size()));
    }
    return view.svg.finish();
  }

  /** A dark night with no light in sight. */
  public static Svg dark() {
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    NightScene.begin(svg, HORIZON);
    svg.end();
    return svg.finish();
  }

  private double across(Bearing bearing) {
    double along = bearing.degrees() - from.degrees();
    double turned = along < 0 ? along + 360 : along;
    if (turned > sweep) {
      throw new IllegalArgumentException("a light at " + bearing + " is out of sight");
    }
    return across(turned);
  }

  /** Where degrees to the right of the left edge stand; the edges stay free for whole discs. */
  private double across(double turned) {
    return EDGE + turned / sweep * (WIDTH - 2 * EDGE);
  }

  private void scale(Lettering lettering) {
    int[] step = step();
    double top = HORIZON + 14;
    PathData ticks = PathData.line(EDGE, top, WIDTH - EDGE, top);
    int first = (int) Math.ceil(from.degrees());
    for (int degrees = first; degrees <= from.degrees() + sweep; degrees++) {
      double x = across(degrees - from.degrees());
      if (Math.floorMod(degrees, step[0]) == 0) {
        ticks.move(x, top).line(x, top + 9);
        String words = lettering.bearing(degrees);
        Pen.letters(svg, words, new Vec(x, top + 24), FIGURES, Palette.NIGHT_INK);
      } else if (Math.floorMod(degrees, step[1]) == 0) {
        ticks.move(x, top).line(x, top + 5);
      }
    }
    Pen.line(svg, ticks, Palette.NIGHT_INK, 1.2);
  }

  private int[] step() {
    int[] step = STEPS[STEPS.length - 1];
    for (int i = STEPS.length - 1; i >= 0 && across(STEPS[i][0]) - EDGE >= APART; i--) {
      step = STEPS[i];
    }
    return step;
  }
}
