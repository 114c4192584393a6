package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.mark.CardinalRules;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Danger;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A boat that comes up to a cardinal mark of a shoal, bound past it: on the named side she goes
 * clear, on any other she stands on over the shoal.
 */
final class CardinalWaters {
  private static final List<Blueprint> WATERS = List.of(Blueprint.OFFSHORE_SHOAL);

  /** Metres before the mark, beside it, and along the shoal and beyond it. */
  private static final double BEFORE = 330;

  private static final double BESIDE = 60;
  private static final double BEHIND = 300;
  private static final double BEYOND = 100;

  /**
   * Degrees off the danger within which she heads for it: the mark has a hand, and is in the way.
   */
  private static final int MOST_OFF = 60;

  private CardinalWaters() {}

  static Scenario drawn(Task task) {
    return task.found(WATERS, water -> in(task, water));
  }

  private static Optional<Scenario> in(Task task, Waterway water) {
    for (PlacedMark each : task.chance().shuffled(water.marks())) {
      if (each.kind().isCardinal() && !water.dangers().isEmpty()) {
        Optional<Scenario> scenario = before(task, water, each);
        if (scenario.isPresent()) {
          return scenario;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Scenario> before(Task task, Waterway water, PlacedMark mark) {
    int off = task.chance().between((int) CardinalRules.NO_HAND_WITHIN + 1, MOST_OFF);
    Bearing towards = mark.kind().quadrant().opposite().middle();
    Bearing heading = towards.plus(task.chance().oneIn(2) ? off : -off);
    Position boat = mark.position().moved(heading, -BEFORE).rounded();
    Afloat afloat = new Afloat(task.practice(), water, boat, heading);
    Scenario scenario = afloat.before(mark, Situation.steering(heading, TimeOfDay.DAY, View.NEAR));
    boolean safe = Afloat.KEEL.isSafe(way(scenario, mark.kind().quadrant()).leastDepth());
    return afloat.comesUpTo(mark) && safe ? Optional.of(scenario) : Optional.empty();
  }

  /** What becomes of a boat that passes in a quadrant. */
  static Way way(Scenario scenario, Quadrant pass) {
    Quadrant named = scenario.mark().kind().quadrant();
    return pass == named ? clear(scenario) : over(scenario, pass.middle());
  }

  /** What becomes of a boat that leaves the mark on a hand. */
  static Way way(Scenario scenario, Side side) {
    Bearing heading = scenario.situation().heading();
    Quadrant named = scenario.mark().kind().quadrant();
    boolean right = CardinalRules.hand(named, heading).filter(side::equals).isPresent();
    double abeam = side == Side.LEAVE_TO_PORT ? 90 : -90;
    return right ? clear(scenario) : over(scenario, heading.plus(abeam));
  }

  /** By the named side, then along the shoal. */
  private static Way clear(Scenario scenario) {
    Bearing named = scenario.mark().kind().quadrant().middle();
    Bearing along = named.plus(90);
    boolean ahead = along.angleTo(scenario.situation().heading()) < 90;
    Position by = mark(scenario).moved(named, BESIDE);
    return sailed(scenario, by, by.moved(ahead ? along : along.reciprocal(), BEHIND));
  }

  /** By another side, and on over the shoal. */
  private static Way over(Scenario scenario, Bearing abeam) {
    Sailing sailing = Afloat.sailing(scenario);
    Position by = mark(scenario).moved(abeam, BESIDE);
    Danger shoal = sailing.water().dangers().get(0);
    Bearing course = by.bearingTo(shoal.at());
    return sailed(scenario, by, shoal.at(), shoal.at().moved(course, BEYOND));
  }

  private static Position mark(Scenario scenario) {
    return Afloat.sailing(scenario).marks().get(0).position();
  }

  private static Way sailed(Scenario scenario, Position... places) {
    Sailing sailing = Afloat.sailing(scenario);
    List<Position> track = new ArrayList<>(List.of(sailing.boat()));
    for (Position each : places) {
      track.add(each.rounded());
    }
    return Way.sailed(sailing.water(), sailing.keel(), new Polyline(track));
  }
}
