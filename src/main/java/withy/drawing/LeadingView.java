package withy.drawing;

import withy.core.light.LightTimeline;
import withy.core.mark.Appearance;

/**
 * Two leading marks as the boat sees them: the front one low by the water, the rear one higher on
 * the land behind it; in line one stands above the other.
 *
 * <p>The separation is in degrees, positive where the front mark is seen to the right of the rear
 * one, whether the two lie ahead or astern; beyond five degrees it is drawn as five.
 */
public final class LeadingView {
  private static final double WIDTH = MarkDrawing.WIDTH;
  private static final double HEIGHT = MarkDrawing.HEIGHT;
  private static final double HORIZON = 132;
  private static final double DEGREE = 26;
  private static final double MOST = 5;
  private static final double FRONT_FOOT = 136;
  private static final double REAR_FOOT = 84;
  private static final double SCALE = 0.47;
  private static final double FRONT_LIGHT = 98;
  private static final double REAR_LIGHT = 32;

  private LeadingView() {}

  /**
   * By day.
   *
   * @param astern whether they are seen over the stern
   */
  public static Svg day(Appearance front, Appearance rear, double separation, boolean astern) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    shore(svg);
    marks(svg, front, rear, WIDTH / 2, separation);
    deck(svg, Deck.DAY, astern);
    return svg.finish();
  }

  /**
   * At night: the two lights at their true rhythm. The picture has no view box, as {@link
   * MarkDrawing#night}.
   *
   * @param astern whether they are seen over the stern
   */
  public static Svg night(
      LightTimeline front, LightTimeline rear, double separation, boolean astern) {
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    darkShore(svg);
    deck(svg, Deck.NIGHT, astern);
    svg.end();
    lights(svg, front, rear, WIDTH / 2, separation, 2);
    return svg.finish();
  }

  /** The land by day on which leading marks stand. */
  static void shore(SvgWriter svg) {
    Scenery.day(svg, WIDTH, HEIGHT, HORIZON);
    land(svg, Palette.HILL, Palette.NEAR_HILL);
  }

  /** The land at night; opens the part of an unscaled picture that grows with it. */
  static void darkShore(SvgWriter svg) {
    NightScene.begin(svg, HORIZON);
    land(svg, Palette.NIGHT_LAND, Palette.NIGHT_LAND);
  }

  /** Two marks on either side of a place along the shore. */
  static void marks(
      SvgWriter svg, Appearance front, Appearance rear, double middle, double separation) {
    double aside = aside(separation);
    MarkDrawing.ashore(svg, rear, middle - aside, REAR_FOOT, SCALE);
    MarkDrawing.ashore(svg, front, middle + aside, FRONT_FOOT, SCALE);
  }

  /**
   * Two lights on either side of a place along the shore, in an unscaled picture.
   *
   * @param count how many lights the picture has
   */
  static void lights(
      SvgWriter svg,
      LightTimeline front,
      LightTimeline rear,
      double middle,
      double separation,
      int count) {
    double aside = aside(separation);
    light(svg, rear, middle - aside, REAR_LIGHT, count);
    light(svg, front, middle + aside, FRONT_LIGHT, count);
  }

  /** How far either mark stands from the middle. */
  private static double aside(double separation) {
    return Math.max(-MOST, Math.min(MOST, separation)) * DEGREE / 2;
  }

  private static void light(SvgWriter svg, LightTimeline timeline, double x, double y, int count) {
    LightDisc.draw(svg, timeline, x / WIDTH, y / HEIGHT, FlashSafety.radius(count));
  }

  static void deck(SvgWriter svg, Deck deck, boolean astern) {
    if (astern) {
      deck.stern(svg, HORIZON);
    } else {
      deck.bow(svg);
    }
  }

  /** A hill behind a low shore, as broad as the marks may stand apart. */
  private static void land(SvgWriter svg, Palette far, Palette near) {
    PathData hill =
        PathData.at(0, HORIZON)
            .line(0, 104)
            .cubic(50, 90, 90, 82, 160, 82)
            .cubic(230, 82, 270, 92, WIDTH, 106)
            .line(WIDTH, HORIZON)
            .close();
    svg.element("path", "d", hill, "fill", far);
    PathData shore =
        PathData.at(0, HORIZON)
            .cubic(50, 122, 100, 124, 160, 124)
            .cubic(220, 124, 270, 122, WIDTH, HORIZON)
            .quadratic(WIDTH * 0.75, HORIZON + 8, WIDTH / 2, HORIZON + 7)
            .quadratic(WIDTH * 0.25, HORIZON + 8, 0, HORIZON)
            .close();
    svg.element("path", "d", shore, "fill", near);
  }
}
