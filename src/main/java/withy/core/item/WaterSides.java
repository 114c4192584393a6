package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.Travel;
import withy.core.scenario.Blueprint;
import withy.core.scenario.Chance;
import withy.core.scenario.LateralCheck;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.SurveyedWater;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;
import withy.core.waterway.WayPast;

/**
 * Items about the side of a lateral mark that are set in a stretch of water: the boat lies in a
 * fairway before the mark, and every answer is sailed.
 */
final class WaterSides {
  private static final List<Blueprint> MARKED =
      List.of(
          Blueprint.HARBOUR_ENTRANCE,
          Blueprint.RIVER,
          Blueprint.ESTUARY,
          Blueprint.COASTAL_PASSAGE);

  /** Metres before the mark from which the boat comes up to it; its passing begins nearer. */
  private static final double BEFORE = 230;

  /** How far off the bow a mark ahead may bear. */
  private static final double AHEAD = 25;

  private final Practice practice;
  private final Waterway water;
  private final Travel travel;

  private WaterSides(Practice practice, Waterway water, Travel travel) {
    this.practice = practice;
    this.water = water;
    this.travel = travel;
  }

  /** A scenario before a lateral mark, with or against the direction of its fairway. */
  static Scenario drawn(Task task, Travel travel) {
    Optional<Scenario> drawn = Optional.empty();
    while (drawn.isEmpty()) {
      Waterway water = task.water(MARKED);
      drawn = new WaterSides(task.practice(), water, travel).scenario(task.chance());
    }
    return drawn.get();
  }

  /** Whether a water has a mark to be asked about inbound, and one outbound. */
  static boolean canBeSetIn(SurveyedWater surveyed, Practice practice) {
    Waterway water = surveyed.marked(practice, Chance.of(0, 0));
    return new WaterSides(practice, water, Travel.WITH).scenario(Chance.of(0, 0)).isPresent()
        && new WaterSides(practice, water, Travel.AGAINST).scenario(Chance.of(0, 0)).isPresent();
  }

  private Optional<Scenario> scenario(Chance chance) {
    List<PlacedMark> lateral =
        water.marks().stream()
            .filter(each -> each.kind().isLateral() && each.serves() != null)
            .toList();
    for (PlacedMark each : chance.shuffled(lateral)) {
      Optional<Scenario> before = before(each).filter(any -> isBorneOut(each));
      if (before.isPresent()) {
        return before;
      }
    }
    return Optional.empty();
  }

  private boolean isBorneOut(PlacedMark mark) {
    return LateralCheck.of(practice, water, mark, Keel.CRUISER)
        .filter(LateralCheck.BORNE_OUT::equals)
        .isPresent();
  }

  private Optional<Scenario> before(PlacedMark mark) {
    Fairway fairway = fairway(water, mark);
    double along = fairway.line().foot(mark.position()).along();
    double back = travel == Travel.WITH ? -BEFORE : BEFORE;
    if (along + back < 0 || along + back > fairway.line().length()) {
      return Optional.empty();
    }
    Position boat = fairway.line().at(along + back);
    Bearing course = fairway.line().bearingAt(along + back);
    Bearing heading = whole(travel == Travel.WITH ? course : course.reciprocal());
    Bearing bearing = whole(boat.bearingTo(mark.position()));
    Bearing buoyage = whole(fairway.direction(mark.position()).bearing());
    boolean told =
        bearing.angleTo(heading) <= AHEAD
            && (travel == Travel.WITH ? heading : heading.reciprocal()).angleTo(buoyage) < 60;
    return told && water.depths().contains(boat)
        ? Optional.of(scenario(mark, boat, heading, bearing, buoyage))
        : Optional.empty();
  }

  private Scenario scenario(
      PlacedMark mark, Position boat, Bearing heading, Bearing bearing, Bearing buoyage) {
    Situation situation =
        new Situation(heading, travel, buoyage, TimeOfDay.DAY, View.NEAR, null, null, null);
    List<PlacedMark> marks = new ArrayList<>(List.of(mark));
    water.marks().stream().filter(each -> !each.equals(mark)).forEach(marks::add);
    List<SightedMark> sighted = new ArrayList<>();
    sighted.add(sighted(mark, boat, bearing));
    marks
        .subList(1, marks.size())
        .forEach(each -> sighted.add(sighted(each, boat, boat.bearingTo(each.position()))));
    return new Scenario(practice, situation, sighted)
        .in(new Sailing(water, Keel.CRUISER, boat, marks));
  }

  private static SightedMark sighted(PlacedMark mark, Position boat, Bearing bearing) {
    double tenths = Math.rint(10 * boat.distanceTo(mark.position())) / 10;
    return new SightedMark(
        mark.kind(), tenth(bearing), Math.max(tenths, 0.1), mark.label(), mark.appearance());
  }

  private static Bearing tenth(Bearing bearing) {
    return Bearing.of(Math.rint(10 * bearing.degrees()) / 10);
  }

  private static Bearing whole(Bearing bearing) {
    return Bearing.of(Math.rint(bearing.degrees()));
  }

  private static Fairway fairway(Waterway water, PlacedMark mark) {
    @Nullable String serves = mark.serves();
    return water
        .fairway(serves == null ? "" : serves)
        .orElseThrow(() -> new IllegalStateException("a lateral mark serves a fairway"));
  }

  /** An option with what becomes of the boat, where the scenario has water. */
  static Option sailed(Option option, Scenario scenario) {
    @Nullable Sailing sailing = scenario.sailing();
    if (sailing == null) {
      return option;
    }
    Side side = Term.parse(Side.class, option.value());
    PlacedMark mark = sailing.marks().get(0);
    Travel travel = scenario.situation().travel();
    Polyline track = WayPast.lateral(fairway(sailing.water(), mark), mark, travel, side);
    double least = sailing.water().sail(track, sailing.keel()).leastDepth();
    return option.sailing(new Way(track, least));
  }
}
