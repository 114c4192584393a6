package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.core.mark.Appearance;
import withy.core.mark.Retroreflector;
import withy.core.mark.Topmark;

/**
 * One mark: near by day, from afar, or at night. All pictures of a view have the same size, so that
 * nothing but the drawing tells one kind from another.
 */
public final class MarkDrawing {
  static final double WIDTH = 320;
  static final double HEIGHT = 280;
  static final double HORIZON = 170;
  private static final double TALLEST = 216;
  private static final double CLOSEST = 1.3;
  private static final double FAR_SCALE = 0.8;

  private MarkDrawing() {}

  /**
   * A mark close by on a calm day.
   *
   * @param label the number or letter that it bears; null for none
   */
  public static Svg near(Appearance appearance, @Nullable String label) {
    return near(appearance, label, List.of());
  }

  /**
   * A mark close by on a calm day, with the sheeting that shines back in the beam of a torch.
   *
   * @param sheeting its pieces from the top down
   */
  public static Svg near(
      Appearance appearance, @Nullable String label, List<Retroreflector> sheeting) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    Scenery.day(svg, WIDTH, HEIGHT, HORIZON);
    double scale = scale(appearance);
    double y = HORIZON + Surface.EYE * scale;
    standing(svg, appearance, label, sheeting, WIDTH / 2, y, scale);
    return svg.finish();
  }

  /** Where a mark will stand that is still to be put together. */
  static Svg openWater() {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    Scenery.day(svg, WIDTH, HEIGHT, HORIZON);
    return svg.finish();
  }

  /** A mark so far off that shape is left and colour gone: one dark blue-grey. */
  public static Svg distant(Appearance appearance) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    double horizon = HEIGHT * 0.64;
    Scenery.day(svg, WIDTH, HEIGHT, horizon);
    silhouette(svg, appearance, WIDTH / 2, horizon + Surface.EYE * FAR_SCALE * 0.4, FAR_SCALE);
    return svg.finish();
  }

  /**
   * A light in the dark at its true rhythm, and below it the strip of light and dark with seconds.
   * The picture has no view box: in a larger space the light keeps its size in CSS pixels.
   *
   * @param letters whether the strip names the colour of the light
   */
  public static Svg night(LightTimeline timeline, Lettering lettering, boolean letters) {
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    NightScene.begin(svg);
    NightScene.strip(svg, timeline, lettering, letters, LightStrip.ALONE);
    svg.end();
    LightDisc.draw(svg, timeline, 0.5, 0.42);
    return svg.finish();
  }

  /** A light in the dark with English lettering, its colour not named. */
  public static Svg night(LightCharacter light) {
    return night(light.timeline(), Lettering.ENGLISH, false);
  }

  /** A mark in its colours, standing in the water at a place. */
  static void standing(
      SvgWriter svg, Appearance appearance, @Nullable String label, double x, double y, double s) {
    standing(svg, appearance, label, List.of(), x, y, s);
  }

  private static void standing(
      SvgWriter svg,
      Appearance appearance,
      @Nullable String label,
      List<Retroreflector> sheeting,
      double x,
      double y,
      double s) {
    Figure figure = Figure.of(appearance);
    place(svg, x, y, s, figure);
    carried(svg, appearance, figure, false);
    figure.paint(svg, label, sheeting);
    svg.end();
    figure.footing().draw(svg, figure.halfWidth(), true);
    svg.end();
  }

  /** A mark in its colours on the land. */
  static void ashore(SvgWriter svg, Appearance appearance, double x, double y, double s) {
    Figure figure = Figure.of(appearance);
    place(svg, x, y, s, figure);
    carried(svg, appearance, figure, false);
    figure.paint(svg, null, List.of());
    svg.end();
    Footing.LAND.draw(svg, figure.halfWidth(), true);
    svg.end();
  }

  /** A mark as a dark shape at a place. */
  static void silhouette(SvgWriter svg, Appearance appearance, double x, double y, double s) {
    Figure figure = Figure.of(appearance);
    place(svg, x, y, s, figure);
    carried(svg, appearance, figure, true);
    figure.silhouette(svg);
    svg.end();
    figure.footing().draw(svg, figure.halfWidth(), false);
    svg.end();
  }

  /** Low marks are seen from closer by than tall ones. */
  static double scale(Appearance appearance) {
    return Math.min(CLOSEST, TALLEST / height(appearance));
  }

  /** From the water to the top of whatever the mark carries. */
  static double height(Appearance appearance) {
    Figure figure = Figure.of(appearance);
    double lantern = appearance.light() == null ? 0 : Lantern.HEIGHT;
    Topmark topmark = appearance.topmark();
    double carried = topmark == null ? 0 : TopmarkDrawing.height(topmark.shape());
    return Math.max(lantern + carried - figure.top(), -figure.highest());
  }

  private static void place(SvgWriter svg, double x, double y, double s, Figure figure) {
    String moved = "translate(" + SvgWriter.number(x) + " " + SvgWriter.number(y) + ")";
    svg.begin("g", "transform", moved + (s == 1 ? "" : " scale(" + SvgWriter.number(s) + ")"));
    svg.begin("g", "transform", "rotate(" + SvgWriter.number(figure.heel()) + ")");
  }

  private static void carried(
      SvgWriter svg, Appearance appearance, Figure figure, boolean silhouette) {
    double foot = figure.top();
    Topmark topmark = appearance.topmark();
    if (appearance.light() != null) {
      foot = Lantern.draw(svg, foot, silhouette);
    }
    if (topmark != null) {
      TopmarkDrawing.draw(svg, topmark, foot, silhouette);
    }
  }
}
