package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.light.LightCharacter;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkLook;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.scenario.Clearance;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** A boat before a danger and its mark, with tracks drawn past them. */
final class ClearanceScene {
  private static final List<Blueprint> WATERS =
      List.of(Blueprint.OFFSHORE_SHOAL, Blueprint.ISOLATED_ROCK, Blueprint.COASTAL_PASSAGE);

  /** Metres within which a mark belongs to a danger, from its middle. */
  private static final double BESIDE = 400;

  /** Degrees by which the heading strays from straight past the mark. */
  private static final int STRAY = 20;

  private final Practice practice;
  private final Chance chance;
  private final boolean choice;

  private ClearanceScene(Practice practice, Chance chance, boolean choice) {
    this.practice = practice;
    this.chance = chance;
    this.choice = choice;
  }

  /**
   * A scenario with tracks to choose from, or with one of which the distance is asked.
   *
   * @param choice whether there are several
   */
  static Scenario drawn(Task task, boolean choice) {
    ClearanceScene scene = new ClearanceScene(task.practice(), task.chance(), choice);
    return task.found(WATERS, scene::in);
  }

  private Optional<Scenario> in(Waterway drawn) {
    for (Danger danger : drawn.dangers()) {
      Waterway water = marked(drawn, danger);
      for (PlacedMark mark : chance.shuffled(water.marks())) {
        if (belongs(mark, danger)) {
          Optional<Scenario> scenario = past(water, danger, mark);
          if (scenario.isPresent()) {
            return scenario;
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean belongs(PlacedMark mark, Danger danger) {
    return mark.serves() == null && mark.position().distanceTo(danger.at()) < BESIDE;
  }

  /** Every other rock or wreck bears a cardinal mark a cable off in place of one upon it. */
  private Waterway marked(Waterway water, Danger danger) {
    boolean cardinal = MarkingRules.has(practice, MarkKind.NORTH_CARDINAL);
    if (danger.kind() == DangerKind.SHOAL || !cardinal || chance.oneIn(2)) {
      return water;
    }
    Quadrant side = chance.pick(List.of(Quadrant.values()));
    MarkLook look = MarkingRules.mark(practice, MarkKind.cardinal(side)).look();
    LightCharacter light = chance.pick(look.lights());
    Position place = danger.at().moved(side.middle(), Clearance.CABLE).rounded();
    List<PlacedMark> marks = new ArrayList<>(water.marks());
    marks.removeIf(each -> belongs(each, danger));
    marks.add(
        new PlacedMark(
            MarkKind.cardinal(side), place, null, null, chance.pick(look.appearances(light))));
    return water.with(marks);
  }

  private Optional<Scenario> past(Waterway water, Danger danger, PlacedMark mark) {
    Bearing clear =
        mark.kind().isCardinal() ? mark.kind().quadrant().middle() : Drawn.bearing(chance);
    double across = chance.oneIn(2) ? 90 : -90;
    Bearing heading = clear.plus(across + chance.between(-STRAY, STRAY));
    TracksPast tracks = new TracksPast(water, danger, mark, heading, clear);
    Afloat boat = new Afloat(practice, water, tracks.boat(), heading);
    Optional<Clearance> drawn = choice ? tracks.choice(chance) : tracks.single(chance);
    return drawn
        .filter(any -> boat.comesUpTo(mark))
        .map(any -> boat.before(mark, situation(heading), any));
  }

  private static Situation situation(Bearing heading) {
    return Situation.steering(heading, TimeOfDay.DAY, View.NEAR);
  }
}
