package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.light.LightTimeline;
import withy.core.mark.Appearance;
import withy.core.mark.Topmark;

/**
 * One mark: near by day, from afar, or at night. All pictures of a view have the same size, so that
 * nothing but the drawing tells one kind from another.
 */
public final class MarkDrawing {
  static final double WIDTH = 320;
  static final double HEIGHT = 280;
  static final double HORIZON = 176;
  private static final double TALLEST = 222;
  private static final double CLOSEST = 1.3;
  private static final double FAR_SCALE = 0.7;

  private MarkDrawing() {}

  /**
   * A mark close by on a calm day.
   *
   * @param label the number or letter that it bears; null for none
   */
  public static Svg near(Appearance appearance, @Nullable String label) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    Scenery.day(svg, WIDTH, HEIGHT, HORIZON);
    double scale = scale(appearance);
    standing(svg, appearance, label, WIDTH / 2, HORIZON + Surface.EYE * scale, scale);
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
    double halfWidth = footprint(appearance);
    place(svg, x, y, s);
    lean(svg, appearance);
    topmark(svg, appearance, false);
    new BodyDrawing(svg, appearance).paint(label);
    svg.end();
    Scenery.wave(svg, halfWidth, true);
    Scenery.reflection(svg, halfWidth);
    Scenery.ripples(svg, halfWidth);
    svg.end();
  }

  /** A mark as a dark shape at a place. */
  static void silhouette(SvgWriter svg, Appearance appearance, double x, double y, double s) {
    place(svg, x, y, s);
    lean(svg, appearance);
    topmark(svg, appearance, true);
    new BodyDrawing(svg, appearance).silhouette();
    svg.end();
    Scenery.wave(svg, footprint(appearance), false);
    svg.end();
  }

  /** Low marks are seen from closer by than tall ones. */
  static double scale(Appearance appearance) {
    return Math.min(CLOSEST, TALLEST / height(appearance));
  }

  /** From the water to the top of whatever the mark carries. */
  private static double height(Appearance appearance) {
    double lantern = appearance.light() == null ? 0 : Lantern.HEIGHT;
    Topmark topmark = appearance.topmark();
    double carried = topmark == null ? 0 : TopmarkDrawing.height(topmark.shape());
    return lantern + carried - BodyForm.of(appearance.body()).top();
  }

  private static double footprint(Appearance appearance) {
    return BodyForm.of(appearance.body()).profile().halfWidth(0);
  }

  private static void place(SvgWriter svg, double x, double y, double s) {
    String moved = "translate(" + SvgWriter.number(x) + " " + SvgWriter.number(y) + ")";
    svg.begin("g", "transform", moved + (s == 1 ? "" : " scale(" + SvgWriter.number(s) + ")"));
  }

  private static void lean(SvgWriter svg, Appearance appearance) {
    double heel = BodyForm.of(appearance.body()).heel();
    svg.begin("g", "transform", "rotate(" + SvgWriter.number(heel) + ")");
  }

  private static void topmark(SvgWriter svg, Appearance appearance, boolean silhouette) {
    double foot = BodyForm.of(appearance.body()).top();
    Topmark topmark = appearance.topmark();
    if (appearance.light() != null) {
      foot = Lantern.draw(svg, foot, silhouette);
    }
    if (topmark != null) {
      TopmarkDrawing.draw(svg, topmark, foot, silhouette);
    }
  }
}
