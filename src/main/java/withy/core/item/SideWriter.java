package withy.core.item;

import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.CardinalRules;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks on which side to leave the mark ahead. */
final class SideWriter implements ItemWriter {
  @Override
  public Form form() {
    return Form.SIDE;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return switch (concept) {
      case LATERAL_SIDE, LATERAL_SHAPE -> time == TimeOfDay.DAY;
      case LATERAL_LIGHT -> time == TimeOfDay.NIGHT;
      case SAFE_WATER, EMERGENCY_WRECK -> true;
      case FIXED_MARK -> time == TimeOfDay.DAY && FixedSides.has(practice);
      case CARDINAL_SIDE -> MarkingRules.has(practice, MarkKind.NORTH_CARDINAL);
      default -> false;
    };
  }

  /** Lateral marks by day: those the boat has before her in a fairway of the water. */
  @Override
  public boolean measuresIn(
      SurveyedWater water, Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.LATERAL_SIDE && WaterSides.canBeSetIn(water, practice);
  }

  @Override
  public Draft write(Task task) {
    Scenario scenario = scenario(task);
    Side key = key(scenario);
    List<Option> wrong =
        SailedOptions.sailable(Distractors.of(task, Form.SIDE, scenario, key.id()), scenario)
            .options(value -> Words.term(Term.parse(Side.class, value)));
    return new Draft(
        Form.SIDE,
        concepts(task),
        scenario,
        prompt(scenario),
        SailedOptions.sailed(new Option(key.id(), Words.term(key), null, null), scenario),
        SailedOptions.sailed(wrong, scenario),
        SideExplanation.of(scenario, key));
  }

  private static List<Concept> concepts(Task task) {
    return switch (task.concept()) {
      case LATERAL_SHAPE, LATERAL_LIGHT, FIXED_MARK ->
          List.of(task.concept(), Concept.LATERAL_SIDE);
      case CARDINAL_SIDE ->
          List.of(
              Concept.CARDINAL_SIDE,
              task.time() == TimeOfDay.DAY ? Concept.CARDINAL_IDENTITY : Concept.CARDINAL_LIGHT);
      default -> List.of(task.concept());
    };
  }

  private static Scenario scenario(Task task) {
    Chance chance = task.chance();
    return switch (task.concept()) {
      case LATERAL_SIDE -> LateralMixture.drawn(task);
      case LATERAL_SHAPE -> lateral(task, Travel.WITH, View.DISTANT);
      case LATERAL_LIGHT ->
          FixedSides.onRiver(task)
              ? FixedSides.river(task)
              : lateral(task, chance.below(5) < 3 ? Travel.WITH : Travel.AGAINST, View.LIGHT);
      case FIXED_MARK -> FixedSides.drawn(task);
      case CARDINAL_SIDE ->
          task.time() == TimeOfDay.DAY && chance.oneIn(3)
              ? CardinalWaters.drawn(task)
              : cardinal(task);
      case SAFE_WATER -> alone(task, MarkKind.SAFE_WATER, Drawn.bearing(chance));
      case EMERGENCY_WRECK -> alone(task, MarkKind.EMERGENCY_WRECK, Drawn.bearing(chance));
      default -> throw new IllegalArgumentException("side does not measure " + task.concept());
    };
  }

  static Scenario lateral(Task task, Travel travel, View view) {
    Chance chance = task.chance();
    MarkKind kind = chance.oneIn(2) ? MarkKind.PORT_HAND : MarkKind.STARBOARD_HAND;
    Bearing buoyage = Drawn.bearing(chance);
    Bearing heading = Drawn.heading(travel, buoyage, chance);
    SightedMark mark = Drawn.ahead(task, kind, view, heading);
    Situation situation =
        new Situation(heading, travel, buoyage, task.time(), view, null, null, null);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  /** A heading on which the boat on the safe side has the mark clearly on one hand. */
  private static Scenario cardinal(Task task) {
    Chance chance = task.chance();
    MarkKind kind = MarkKind.cardinal(chance.pick(List.of(Quadrant.values())));
    double abeam = kind.quadrant().opposite().middle().degrees();
    int least = (int) CardinalRules.NO_HAND_WITHIN;
    int off = chance.between(least, 180 - least);
    return alone(task, kind, Bearing.of(abeam + (chance.oneIn(2) ? off : -off)));
  }

  private static Scenario alone(Task task, MarkKind kind, Bearing heading) {
    View view = task.time() == TimeOfDay.NIGHT ? View.LIGHT : View.NEAR;
    Situation situation = Situation.steering(heading, task.time(), view);
    SightedMark mark = Drawn.ahead(task, kind, view, heading);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  private static Side key(Scenario scenario) {
    MarkKind kind = scenario.mark().kind();
    Situation situation = scenario.situation();
    Optional<Side> side =
        kind.isCardinal()
            ? CardinalRules.hand(CardinalRules.pass(kind), situation.heading())
            : Optional.ofNullable(SideBeliefs.side(scenario, situation.travel()));
    return side.orElseThrow(() -> new IllegalStateException(kind.id() + " has no side here"));
  }

  private static Message prompt(Scenario scenario) {
    Situation situation = scenario.situation();
    MarkKind kind = scenario.mark().kind();
    String view = situation.view().id();
    if (situation.waters() != null) {
      return Message.of("prompt.side." + situation.waters().id() + "." + situation.travel().id());
    }
    return kind.isLateral()
        ? Message.of(
            "prompt.side." + situation.travel().id() + "." + view, scenario.practice().region())
        : Message.of("prompt.side.heading." + view, situation.heading());
  }
}
