package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;

/**
 * A channel from above, north up, before the boat that is about to go along it: its marks in their
 * colours with their numbers, a question mark beside the one that is asked about.
 */
final class ChannelPlan {
  private static final double ASTERN = 84;
  private static final double NEAREST = 34;
  private static final double LENGTH = 122;
  private static final double HALF_WIDTH = 20;
  private static final double LETTERS = 19;
  private static final double BESIDE = 19;

  private final ChartDisc disc;
  private final SvgWriter svg;
  private final Scenario scenario;
  private final Bearing ahead;
  private final Vec boat;
  private final double first;
  private final double last;

  private ChannelPlan(SvgWriter svg, ChartDisc disc, Scenario scenario) {
    this.svg = svg;
    this.disc = disc;
    this.scenario = scenario;
    Situation situation = scenario.situation();
    Bearing inward = situation.buoyage() == null ? Bearing.NORTH : situation.buoyage();
    this.ahead = situation.travel() == Travel.AGAINST ? inward.reciprocal() : inward;
    this.boat = ChartDisc.MIDDLE.plus(Vec.along(ahead, -ASTERN));
    this.first = scenario.marks().stream().mapToDouble(this::along).min().orElseThrow();
    this.last = scenario.marks().stream().mapToDouble(this::along).max().orElseThrow();
  }

  /**
   * @param number what stands beside the mark that is asked about; null for a question mark
   */
  static Svg of(Scenario scenario, @Nullable String number, Lettering lettering) {
    SvgWriter svg = SvgWriter.scaled(ChartDisc.SIZE, ChartDisc.SIZE);
    ChartDisc disc = ChartDisc.on(svg, 1);
    disc.quarters(lettering);
    ChannelPlan plan = new ChannelPlan(svg, disc, scenario);
    plan.water();
    plan.buoyage();
    plan.marks(number);
    disc.boat(plan.boat, scenario.situation().heading(), 0);
    return svg.finish();
  }

  /** Deeper water is white, as on charts. */
  private void water() {
    Vec end = Vec.along(ahead, ChartDisc.RADIUS - 2);
    Vec from = ChartDisc.MIDDLE.minus(end);
    Vec to = ChartDisc.MIDDLE.plus(end);
    PathData axis = PathData.line(from.x(), from.y(), to.x(), to.y());
    Pen.band(svg, axis, Palette.WHITE, 2 * HALF_WIDTH);
  }

  private void buoyage() {
    Bearing inward = scenario.situation().buoyage();
    if (inward != null) {
      disc.buoyage(ChartDisc.MIDDLE.plus(Vec.along(ahead.plus(-90), 84)), inward);
    }
  }

  private void marks(@Nullable String number) {
    for (SightedMark each : scenario.marks()) {
      boolean asked = each.equals(scenario.mark());
      Vec at = at(each);
      mark(at, each.appearance());
      Vec beside = at.plus(Vec.along(ahead.plus(across(each) < 0 ? -90 : 90), BESIDE));
      String words = asked ? (number == null ? "?" : number) : each.label();
      Pen.letters(svg, words == null ? "" : words, beside, LETTERS, Palette.INK);
    }
  }

  /** The channel is drawn broader than it is, its marks at true distances along it. */
  private Vec at(SightedMark mark) {
    double share = last - first < 1 ? 0 : (along(mark) - first) / (last - first);
    double along = NEAREST + Math.min(LENGTH, (last - first) / 3) * share;
    double across = across(mark) < 0 ? -HALF_WIDTH : HALF_WIDTH;
    return boat.plus(Vec.along(ahead, along)).plus(Vec.along(ahead.plus(90), across));
  }

  private double along(SightedMark mark) {
    return mark.distance() * StrictMath.cos(off(mark));
  }

  private double across(SightedMark mark) {
    return mark.distance() * StrictMath.sin(off(mark));
  }

  private double off(SightedMark mark) {
    return StrictMath.toRadians(mark.bearing().relativeTo(ahead));
  }

  /** A can, a cone or a slim body, upright as charts have them. */
  private void mark(Vec at, Appearance appearance) {
    double x = at.x();
    double y = at.y();
    PathData body =
        appearance.body() == BodyShape.CAN
            ? PathData.polygon(x - 6, y - 7, x + 6, y - 7, x + 6, y + 7, x - 6, y + 7)
            : appearance.body() == BodyShape.CONICAL
                ? PathData.polygon(x, y - 9, x + 7.5, y + 7, x - 7.5, y + 7)
                : PathData.polygon(x - 2, y - 10, x + 2, y - 10, x + 4.5, y + 7, x - 4.5, y + 7);
    Pen.area(svg, body, Palette.of(appearance.colours().get(0)), Palette.INK, 1.4);
  }
}
