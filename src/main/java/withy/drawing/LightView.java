package withy.drawing;

import withy.core.light.LightTimeline;

/**
 * A light alone over a dark sea. The picture has no view box: it fills whatever room it is given,
 * and the light keeps its size in CSS pixels.
 */
public final class LightView {
  private static final double WIDTH = 320;
  private static final double HEIGHT = 140;

  private LightView() {}

  /**
   * A light at the rhythm of a timeline.
   *
   * @param together lights that flash side by side on the page, this one included; the more, the
   *     smaller each, so that all of them together may flash
   */
  public static Svg of(LightTimeline timeline, int together) {
    SvgWriter svg = sea();
    LightDisc.draw(svg, timeline, 0.5, 0.42, FlashSafety.radius(together));
    return svg.finish();
  }

  /** The dark where no light is shown. */
  public static Svg unlit() {
    return sea().finish();
  }

  private static SvgWriter sea() {
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    svg.element("rect", "width", "100%", "height", "100%", "fill", Palette.NIGHT);
    svg.element("rect", "y", "64%", "width", "100%", "height", "36%", "fill", Palette.NIGHT_SEA);
    svg.element("rect", "y", "64%", "width", "100%", "height", 1.5, "fill", Palette.NIGHT_HORIZON);
    return svg;
  }
}
