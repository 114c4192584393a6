package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.mark.Practice;
import withy.core.scenario.Clearance;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** A boat on her heading in a stretch of water, and how she sees its marks. */
record Afloat(Practice practice, Waterway water, Position boat, Bearing heading) {
  static final Keel KEEL = Keel.CRUISER;

  /** How far off the bow a mark ahead may bear. */
  static final double AHEAD = 25;

  /** In whole degrees. */
  Bearing bearing(PlacedMark mark) {
    return whole(boat.bearingTo(mark.position()));
  }

  /** Whether a mark lies before her bow, and she in the chart. */
  boolean comesUpTo(PlacedMark mark) {
    return water.depths().contains(boat) && bearing(mark).angleTo(heading) <= AHEAD;
  }

  /** The scenario in which she is asked about a mark, whose bearing she has in whole degrees. */
  Scenario before(PlacedMark asked, Situation situation) {
    Scenario scenario = before(List.of(asked), situation);
    List<SightedMark> sighted = new ArrayList<>(scenario.marks());
    sighted.set(0, sighted(asked, bearing(asked)));
    return new Scenario(practice, situation, sighted).in(sailing(scenario));
  }

  /** The scenario in which she is asked about some marks, those of the water behind them. */
  Scenario before(List<PlacedMark> asked, Situation situation) {
    List<PlacedMark> marks = new ArrayList<>(asked);
    water.marks().stream().filter(each -> !asked.contains(each)).forEach(marks::add);
    List<SightedMark> sighted =
        marks.stream().map(each -> sighted(each, boat.bearingTo(each.position()))).toList();
    return new Scenario(practice, situation, sighted).in(new Sailing(water, KEEL, boat, marks));
  }

  /** The same with tracks drawn past a danger. */
  Scenario before(PlacedMark asked, Situation situation, Clearance drawn) {
    Scenario scenario = before(asked, situation);
    return scenario.in(sailing(scenario).clearing(drawn));
  }

  private SightedMark sighted(PlacedMark mark, Bearing bearing) {
    double tenths = Math.rint(10 * boat.distanceTo(mark.position())) / 10;
    return new SightedMark(
        mark.kind(), Drawn.tenths(bearing), Math.max(tenths, 0.1), mark.label(), mark.appearance());
  }

  /**
   * The water of a scenario that lies in one.
   *
   * @throws IllegalStateException if it lies on open water
   */
  static Sailing sailing(Scenario scenario) {
    @Nullable Sailing sailing = scenario.sailing();
    if (sailing == null) {
      throw new IllegalStateException("no depths on open water");
    }
    return sailing;
  }

  static Bearing whole(Bearing bearing) {
    return Bearing.of(Math.rint(bearing.degrees()));
  }
}
