package withy.drawing;

import withy.core.light.LightTimeline;

/** The dark behind a light: what grows with the picture, unlike the light itself. */
final class NightScene {
  static final double HORIZON = 150;
  private static final double STRIP_TOP = MarkDrawing.HEIGHT - LightStrip.HEIGHT;

  private NightScene() {}

  /** Opens the part of an unscaled picture that grows with it, and darkens all. */
  static void begin(SvgWriter svg) {
    begin(svg, HORIZON);
  }

  /** The same with the horizon at a height of its own. */
  static void begin(SvgWriter svg, double horizon) {
    svg.element("rect", "width", "100%", "height", "100%", "fill", Palette.NIGHT);
    svg.begin("svg", "viewBox", "0 0 320 280", "width", "100%", "height", "100%");
    Scenery.night(svg, MarkDrawing.WIDTH, MarkDrawing.HEIGHT, horizon);
  }

  /** The strip of light and dark along the lower edge. */
  static void strip(
      SvgWriter svg, LightTimeline timeline, Lettering lettering, boolean letters, double size) {
    svg.begin("g", "transform", "translate(0 " + SvgWriter.number(STRIP_TOP) + ")");
    LightStrip.draw(svg, timeline, lettering, letters, size);
    svg.end();
  }
}
