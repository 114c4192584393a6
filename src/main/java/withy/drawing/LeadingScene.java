package withy.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.View;
import withy.core.waterway.LeadingPair;

/**
 * The leading marks of a scenario: one pair as it lies off the bow or the stern, several side by
 * side from left to right, each under its bearing.
 */
final class LeadingScene {
  private static final double WIDTH = MarkDrawing.WIDTH;
  private static final double HEIGHT = MarkDrawing.HEIGHT;
  private static final double DEGREE_OFF = 5.5;
  private static final double TAPE = 30;
  private static final double GAP = 4;
  private static final double LETTERS = 20;

  private record Pair(SightedMark front, SightedMark rear) {
    LeadingPair marks() {
      return new LeadingPair(front.bearing(), rear.bearing());
    }

    double opening() {
      return marks().opening();
    }
  }

  private final Scenario scenario;
  private final Bearing towards;
  private final boolean astern;
  private final List<Pair> pairs = new ArrayList<>();

  private LeadingScene(Scenario scenario) {
    this.scenario = scenario;
    List<SightedMark> marks = scenario.marks();
    for (int i = 0; i < marks.size(); i += 2) {
      pairs.add(new Pair(marks.get(i), marks.get(i + 1)));
    }
    Bearing heading = scenario.situation().heading();
    this.astern = !pairs.get(0).marks().ahead(heading);
    this.towards = astern ? heading.reciprocal() : heading;
    pairs.sort(Comparator.comparingDouble(each -> off(each)));
  }

  static Svg of(Scenario scenario) {
    LeadingScene scene = new LeadingScene(scenario);
    boolean night = scenario.situation().view() == View.LIGHT;
    if (scene.pairs.size() == 1) {
      return night ? scene.oneAtNight() : scene.oneByDay();
    }
    return night ? scene.severalAtNight() : scene.severalByDay();
  }

  private double off(Pair pair) {
    return pair.front().bearing().relativeTo(towards);
  }

  private Svg oneByDay() {
    Pair pair = pairs.get(0);
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    LeadingView.shore(svg);
    LeadingView.marks(
        svg, pair.front().appearance(), pair.rear().appearance(), middle(), pair.opening());
    LeadingView.deck(svg, Deck.DAY, astern);
    return svg.finish();
  }

  private double middle() {
    return WIDTH / 2 + DEGREE_OFF * off(pairs.get(0));
  }

  private Svg oneAtNight() {
    Pair pair = pairs.get(0);
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    LeadingView.darkShore(svg);
    LeadingView.deck(svg, Deck.NIGHT, astern);
    svg.end();
    LeadingView.lights(
        svg,
        pair.front().light().timeline(),
        pair.rear().light().timeline(),
        middle(),
        pair.opening(),
        2);
    return svg.finish();
  }

  /** As through a glass, one pair after the other. */
  private Svg severalByDay() {
    SvgWriter svg = SvgWriter.scaled(WIDTH, HEIGHT);
    svg.begin("g", "transform", "translate(0 " + SvgWriter.number(TAPE) + ")");
    LeadingView.shore(svg);
    for (int i = 0; i < pairs.size(); i++) {
      Pair pair = pairs.get(i);
      LeadingView.marks(
          svg, pair.front().appearance(), pair.rear().appearance(), middle(i), pair.opening());
    }
    svg.end();
    svg.element("rect", "width", WIDTH, "height", TAPE, "fill", Palette.PAPER);
    for (int i = 0; i < pairs.size(); i++) {
      letters(svg, pairs.get(i), middle(i), Palette.INK);
      double x = i * WIDTH / pairs.size();
      Pen.line(svg, PathData.line(x, 0, x, HEIGHT), Palette.PAPER, i == 0 ? 0 : GAP);
    }
    return svg.finish();
  }

  /** Where the pair of an index stands, of several. */
  private double middle(int index) {
    return (index + 0.5) * WIDTH / pairs.size();
  }

  private Svg severalAtNight() {
    SvgWriter svg = SvgWriter.unscaled(WIDTH, HEIGHT);
    LeadingView.darkShore(svg);
    for (int i = 0; i < pairs.size(); i++) {
      letters(svg, pairs.get(i), middle(i), Palette.NIGHT_INK);
      double x = i * WIDTH / pairs.size();
      Pen.line(svg, PathData.line(x, 0, x, HEIGHT), Palette.NIGHT_HORIZON, 1.5);
    }
    svg.end();
    for (int i = 0; i < pairs.size(); i++) {
      Pair pair = pairs.get(i);
      int count = scenario.marks().size();
      LeadingView.lights(
          svg,
          pair.front().light().timeline(),
          pair.rear().light().timeline(),
          middle(i),
          pair.opening(),
          count);
    }
    return svg.finish();
  }

  /** The bearing of the pair in whole degrees, in figures as charts give that of the line. */
  private static void letters(SvgWriter svg, Pair pair, double x, Palette ink) {
    long degrees = Math.round(pair.front().bearing().plus(-pair.opening() / 2).degrees()) % 360;
    String figures = Long.toString(1000 + degrees).substring(1);
    Pen.letters(svg, figures, new Vec(x, TAPE / 2), LETTERS, ink);
  }
}
