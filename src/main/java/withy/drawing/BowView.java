package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Symbol;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/** What the helmsman sees over the bow: the mark under a scale of bearings. */
final class BowView {
  private static final double WIDTH = MarkDrawing.WIDTH;
  private static final double HEIGHT = MarkDrawing.HEIGHT;
  private static final double HORIZON = NightScene.HORIZON;
  private static final double[] HALF_ANGLES = {40, 80, 180};

  /** A mark is no nearer to the edge than this share of the half-angle, where it can be helped. */
  private static final double NEAR_EDGE = 0.7;

  private static final double MARGIN = 48;
  private static final double LANTERN = 74;
  private static final double TAPE = 31;

  /** How much larger a mark is drawn whose small sign decides. */
  private static final double SIGN = 1.6;

  private final Situation situation;
  private final SightedMark sighted;
  private final double halfAngle;

  private BowView(Situation situation, SightedMark sighted) {
    this.situation = situation;
    this.sighted = sighted;
    this.halfAngle = halfAngle(StrictMath.abs(relative()));
  }

  static Svg of(Situation situation, SightedMark sighted, Lettering lettering, boolean letters) {
    BowView view = new BowView(situation, sighted);
    return situation.view() == View.LIGHT ? view.night(lettering, letters) : view.day(lettering);
  }

  private static double halfAngle(double off) {
    for (double each : HALF_ANGLES) {
      if (off <= each * NEAR_EDGE) {
        return each;
      }
    }
    return HALF_ANGLES[HALF_ANGLES.length - 1];
  }

  private double relative() {
    return sighted.bearing().relativeTo(situation.heading());
  }

  private double across(double relative) {
    return WIDTH / 2 * (1 + relative / halfAngle);
  }

  /** Nearer is larger, but far less than by true perspective, so that far marks stay legible. */
  private double scale() {
    double true100 = StrictMath.pow(100 / sighted.distance(), 0.2);
    double usual = Math.max(0.5, Math.min(0.68, 0.68 * true100));
    return bearsSmallSign() ? usual * SIGN : usual;
  }

  /** The yellow signs of the Intracoastal Waterway decide and are small: they must be read. */
  private boolean bearsSmallSign() {
    @Nullable Symbol symbol = sighted.appearance().symbol();
    return symbol != null && symbol.isIntracoastal();
  }

  private Svg day(Lettering lettering) {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    Scenery.day(svg, WIDTH, HEIGHT, HORIZON);
    double s = scale();
    double x = Math.max(MARGIN, Math.min(WIDTH - MARGIN, across(relative())));
    if (situation.view() == View.DISTANT) {
      MarkDrawing.silhouette(
          svg, sighted.appearance(), x, HORIZON + Surface.EYE * s * 0.4, s * 0.85);
    } else {
      double water = HORIZON + Surface.EYE * s;
      MarkDrawing.standing(svg, sighted.appearance(), sighted.label(), x, water, s);
    }
    Deck.DAY.bow(svg);
    tape(svg, lettering, Palette.PAPER, Palette.INK);
    return svg.finish();
  }

  private Svg night(Lettering lettering, boolean letters) {
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    NightScene.begin(svg);
    Deck.NIGHT.bow(svg);
    tape(svg, lettering, Palette.NIGHT, Palette.NIGHT_INK);
    LightCharacter light = sighted.appearance().light();
    if (light != null) {
      NightScene.strip(svg, light.timeline(), lettering, letters, LightStrip.BESIDE_PLAN);
    }
    svg.end();
    if (light != null) {
      double lantern = HORIZON - LANTERN * scale() * 0.6;
      double x = Math.max(24, Math.min(WIDTH - 24, across(relative())));
      LightDisc.draw(svg, light.timeline(), x / WIDTH, lantern / HEIGHT);
    }
    return svg.finish();
  }

  /** Bearings along the upper edge; the mark on it is the heading. */
  private void tape(SvgWriter svg, Lettering lettering, Palette ground, Palette ink) {
    svg.element("rect", "width", WIDTH, "height", TAPE, "fill", ground);
    int step = halfAngle > 100 ? 60 : halfAngle > 50 ? 20 : 10;
    PathData ticks = PathData.at(0, TAPE).line(WIDTH, TAPE);
    double heading = situation.heading().degrees();
    int first = (int) Math.ceil((heading - halfAngle) / (step / 2)) * (step / 2);
    for (int degrees = first; degrees <= heading + halfAngle; degrees += step / 2) {
      double x = across(degrees - heading);
      boolean labelled = Math.floorMod(degrees, step) == 0;
      ticks.move(x, TAPE).line(x, TAPE - (labelled ? 7 : 4));
      if (labelled && x > 16 && x < WIDTH - 16) {
        String words = lettering.bearing(degrees);
        Pen.letters(svg, words, new Vec(x, 12), 18, ink);
      }
    }
    Pen.line(svg, ticks, ink, 1);
    double m = WIDTH / 2;
    PathData pointer = PathData.polygon(m, TAPE + 1, m - 6, TAPE + 10, m + 6, TAPE + 10);
    Pen.area(svg, pointer, ink, ink, 1);
  }
}
