package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Travel;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;

/** The plan of a boat and the mark that she meets, and after the answer her way past it. */
final class PassingPlan {
  private static final double ASTERN = 54;
  private static final double AHEAD = 20;
  private static final double ARROW = 74;
  private static final double SIGNS = 1.3;
  private static final double MIDDLE_GROUND = 27;

  private final ChartDisc disc;
  private final Situation situation;
  private final Vec boat;
  private final Vec mark;
  private final Bearing bearing;

  private PassingPlan(ChartDisc disc, Situation situation, Bearing bearing) {
    this.disc = disc;
    this.situation = situation;
    this.bearing = bearing;
    this.boat = ChartDisc.MIDDLE.plus(Vec.along(bearing, -ASTERN));
    this.mark = ChartDisc.MIDDLE.plus(Vec.along(bearing, AHEAD));
  }

  /**
   * @param key the value whose way is drawn whole; null before the answer
   * @param wrong the value whose way is dashed; null where none was chosen wrongly
   */
  static Svg of(
      Situation situation,
      SightedMark sighted,
      @Nullable String key,
      @Nullable String wrong,
      Lettering lettering) {
    SvgWriter svg = SvgWriter.scaled(ChartDisc.SIZE, ChartDisc.SIZE);
    ChartDisc disc = ChartDisc.on(svg, SIGNS);
    disc.quarters(lettering);
    PassingPlan plan = new PassingPlan(disc, situation, sighted.bearing());
    plan.arrow();
    plan.ways(key, wrong);
    disc.mark(plan.mark);
    disc.boat(plan.boat, situation.heading(), key == null ? 54 : 0);
    return svg.finish();
  }

  private void arrow() {
    Bearing direction = situation.buoyage();
    if (direction != null) {
      disc.buoyage(ChartDisc.MIDDLE.plus(Vec.along(bearing.plus(-90), ARROW)), direction);
    }
  }

  private void ways(@Nullable String key, @Nullable String wrong) {
    if (key != null) {
      Passing right = atJunction() ? passing(key).without() : passing(key);
      if (atJunction()) {
        junction(key);
      }
      Vec foul = right.foul();
      if (foul != null) {
        disc.foul(foul, right.foulRadius());
      }
      if (wrong != null) {
        for (List<Vec> way : passing(wrong).ways()) {
          if (!right.ways().contains(way)) {
            WayDrawing.wrong(disc.svg(), right.struckBy(way), situation.heading());
          }
        }
      }
      for (List<Vec> way : right.ways()) {
        WayDrawing.right(disc.svg(), way, situation.heading());
      }
    }
  }

  private boolean atJunction() {
    return situation.intent() != null;
  }

  /** Two channels, the preferred one the broader, and the shoal that parts them. */
  private void junction(String key) {
    channels(key, 1.6, Palette.SECOND_INK);
    channels(key, 0, Palette.WHITE);
    double inward = situation.travel() == Travel.AGAINST ? -MIDDLE_GROUND : MIDDLE_GROUND;
    disc.foul(mark.plus(Vec.along(bearing, inward)), 12);
  }

  private void channels(String key, double edge, Palette ink) {
    for (String side : List.of("leave-to-port", "leave-to-starboard")) {
      boolean preferred = side.equals(key) == (situation.intent() == ChannelIntent.PREFERRED);
      for (List<Vec> way : passing(side).ways()) {
        PathData line = Passing.smooth(way, situation.heading());
        Pen.band(disc.svg(), line, ink, edge + (preferred ? 28 : 10));
      }
    }
  }

  private Passing passing(String value) {
    return Passing.of(value, boat, mark, situation.heading());
  }
}
