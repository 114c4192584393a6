package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.waterway.LeadingPair;
import withy.core.waterway.Steering;

/**
 * A leading line from above, north up, after the answer: its two marks, the boat on the line or off
 * it, farther than she is, and the way to steer.
 */
final class LeadingPlan {
  private static final double FRONT = 62;
  private static final double REAR = 96;
  private static final double OFF = 26;
  private static final double SIGNS = 1.3;

  private final ChartDisc disc;
  private final SvgWriter svg;
  private final Scenario scenario;
  private final Bearing line;
  private final LeadingPair marks;
  private final int onward;

  private LeadingPlan(SvgWriter svg, ChartDisc disc, Scenario scenario) {
    this.svg = svg;
    this.disc = disc;
    this.scenario = scenario;
    List<SightedMark> sighted = scenario.marks();
    this.marks = new LeadingPair(sighted.get(0).bearing(), sighted.get(1).bearing());
    Bearing charted = sighted.get(0).lead();
    this.line = charted == null ? marks.rear() : charted;
    this.onward = marks.ahead(heading()) ? 1 : -1;
  }

  /**
   * @param wrong the value whose way is dashed; null where none was chosen wrongly
   */
  static Svg of(Scenario scenario, @Nullable String wrong, Lettering lettering) {
    SvgWriter svg = SvgWriter.scaled(ChartDisc.SIZE, ChartDisc.SIZE);
    ChartDisc disc = ChartDisc.on(svg, SIGNS);
    disc.quarters(lettering);
    LeadingPlan plan = new LeadingPlan(svg, disc, scenario);
    plan.line();
    if (wrong != null) {
      Steering steering = Term.parse(Steering.class, wrong);
      WayDrawing.wrong(svg, plan.wrong(steering), plan.heading());
    }
    WayDrawing.right(svg, plan.right(), plan.leaving());
    plan.others();
    disc.mark(plan.at(FRONT, 0));
    disc.mark(plan.at(REAR, 0));
    disc.boat(plan.boat(), plan.heading(), 0);
    return svg.finish();
  }

  private Bearing heading() {
    return scenario.situation().heading();
  }

  /** On the line her way is the line's, wherever the bow points. */
  private Bearing leaving() {
    boolean on = boatRight() == 0;
    return on ? (onward > 0 ? line : line.reciprocal()) : heading();
  }

  /** A place so far along the line towards the marks, and so far to the right of it. */
  private Vec at(double along, double right) {
    return ChartDisc.MIDDLE.plus(Vec.along(line, along)).plus(Vec.along(line.plus(90), right));
  }

  private double boatAlong() {
    return onward > 0 ? -72 : 16;
  }

  /** The boat is right of the line when she sees the front mark left of the rear one. */
  private double boatRight() {
    double open = marks.opening();
    boolean off = StrictMath.abs(open) > LeadingPair.IN_LINE_WITHIN;
    return off ? (open < 0 ? OFF : -OFF) : 0;
  }

  private Vec boat() {
    return at(boatAlong(), boatRight());
  }

  /** Whole where it is followed, dashed between the marks, as charts have it. */
  private void line() {
    Vec sea = at(-ChartDisc.RADIUS, 0);
    Vec front = at(FRONT, 0);
    Vec rear = at(REAR, 0);
    Pen.line(svg, PathData.line(sea.x(), sea.y(), front.x(), front.y()), Palette.SECOND_INK, 1.2);
    Pen.dashed(
        svg,
        PathData.line(front.x(), front.y(), rear.x(), rear.y()),
        Palette.SECOND_INK,
        1.2,
        "4 3");
  }

  private List<Vec> right() {
    double along = boatAlong();
    return List.of(boat(), at(along + onward * 62, 0), at(along + onward * 92, 0));
  }

  private List<Vec> wrong(Steering steering) {
    double along = boatAlong();
    double right = boatRight();
    if (steering == Steering.ON_THE_LINE) {
      return List.of(boat(), at(along + onward * 40, right), at(along + onward * 76, right));
    }
    double side = (steering == Steering.STEER_STARBOARD ? onward : -onward) * 24;
    return List.of(
        boat(), at(along + onward * 30, right + side / 3), at(along + onward * 62, right + side));
  }

  /** The marks of other lines that are in sight, as they bear from the boat. */
  private void others() {
    for (SightedMark each : scenario.marks().subList(2, scenario.marks().size())) {
      double far = scenario.marks().indexOf(each) % 2 == 0 ? 96 : 120;
      Vec at = boat().plus(Vec.along(each.bearing(), far));
      svg.element("circle", "cx", at.x(), "cy", at.y(), "r", 4, "fill", Palette.SECOND_INK);
    }
  }
}
