package withy.core.item;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.LateralCheck;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Appearance;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Fairway;
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
    return task.found(
        MARKED, water -> new WaterSides(task.practice(), water, travel).scenario(task.chance()));
  }

  /** The same as a silhouette without colour, if the shape of the mark then tells its side. */
  static Scenario fromAfar(Scenario near) {
    Appearance seen = near.mark().appearance();
    boolean tells =
        SideRules.byShape(seen.body(), Travel.WITH).isPresent()
            || Optional.ofNullable(seen.topmark())
                .flatMap(each -> SideRules.byTopmark(each.shape(), Travel.WITH))
                .isPresent();
    Situation situation = near.situation();
    Situation far =
        new Situation(
            situation.heading(),
            situation.travel(),
            situation.buoyage(),
            situation.time(),
            View.DISTANT,
            null,
            null,
            null);
    return tells
        ? new Scenario(near.practice(), far, near.marks())
            .in(Objects.requireNonNull(near.sailing()))
        : near;
  }

  /** Whether a water has a mark to be asked about inbound, and one outbound. */
  static boolean canBeSetIn(SurveyedWater surveyed, Practice practice) {
    Waterway water = surveyed.marked(practice, Chance.of(0, 0));
    return new WaterSides(practice, water, Travel.WITH).scenario(Chance.of(0, 0)).isPresent()
        && new WaterSides(practice, water, Travel.AGAINST).scenario(Chance.of(0, 0)).isPresent();
  }

  /** Where the marks stand that a boat of some travel can be asked about in a water. */
  static List<Position> asked(SurveyedWater surveyed, Practice practice, Travel travel) {
    if (travel == Travel.NONE || !canBeSetIn(surveyed, practice)) {
      return List.of();
    }
    Waterway water = surveyed.marked(practice, Chance.of(0, 0));
    WaterSides sides = new WaterSides(practice, water, travel);
    return sides.lateral().stream()
        .filter(
            each ->
                sides.before(each).isPresent()
                    && LateralCheck.isBorneOut(practice, water, each, Afloat.KEEL))
        .map(PlacedMark::position)
        .toList();
  }

  private List<PlacedMark> lateral() {
    return water.marks().stream()
        .filter(each -> each.kind().isLateral() && each.serves() != null)
        .toList();
  }

  private Optional<Scenario> scenario(Chance chance) {
    for (PlacedMark each : chance.shuffled(lateral())) {
      Optional<Scenario> before =
          before(each).filter(any -> LateralCheck.isBorneOut(practice, water, each, Afloat.KEEL));
      if (before.isPresent()) {
        return before;
      }
    }
    return Optional.empty();
  }

  private Optional<Scenario> before(PlacedMark mark) {
    Fairway fairway = water.served(mark).orElseThrow();
    double along = fairway.line().foot(mark.position()).along();
    double back = travel == Travel.WITH ? -BEFORE : BEFORE;
    if (along + back < 0 || along + back > fairway.line().length()) {
      return Optional.empty();
    }
    Bearing course = fairway.line().bearingAt(along + back);
    Bearing heading = Afloat.whole(travel == Travel.WITH ? course : course.reciprocal());
    Bearing buoyage = Afloat.whole(fairway.direction(mark.position()).bearing());
    Afloat boat = new Afloat(practice, water, fairway.line().at(along + back), heading);
    boolean told = (travel == Travel.WITH ? heading : heading.reciprocal()).angleTo(buoyage) < 60;
    Situation situation =
        new Situation(heading, travel, buoyage, TimeOfDay.DAY, View.NEAR, null, null, null);
    return told && boat.comesUpTo(mark)
        ? Optional.of(boat.before(mark, situation))
        : Optional.empty();
  }

  /** What becomes of the boat of a scenario that leaves its mark on a side. */
  static Way way(Scenario scenario, Side side) {
    Sailing sailing = Afloat.sailing(scenario);
    PlacedMark mark = sailing.marks().get(0);
    Travel travel = scenario.situation().travel();
    Polyline track =
        WayPast.lateral(sailing.water().served(mark).orElseThrow(), mark, travel, side);
    return Way.sailed(sailing.water(), sailing.keel(), track);
  }
}
