package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.Setting;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/**
 * Asks whether a heading lies with or against the conventional direction. A harbour and a river
 * have one of their own, which the chart's arrow shows, and it overrides that of the coast; the
 * scenarios are those in which the two say the opposite.
 */
final class DirectionWriter implements ItemWriter {
  private static final List<Setting> SETTINGS = List.of(Setting.values());

  @Override
  public Form form() {
    return Form.DIRECTION;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.BUOYAGE_DIRECTION && time == TimeOfDay.DAY;
  }

  @Override
  public Draft write(Task task) {
    Situation situation = situation(task);
    Scenario scenario = new Scenario(task.practice(), situation, List.of());
    Travel key = situation.travel();
    List<Option> wrong =
        Distractors.of(task, Form.DIRECTION, scenario, key.id())
            .options(value -> Words.term(Term.parse(Travel.class, value)));
    return new Draft(
        Form.DIRECTION,
        List.of(Concept.BUOYAGE_DIRECTION),
        scenario,
        words("prompt.direction.", situation),
        new Option(key.id(), Words.term(key), null, null),
        wrong,
        words("rule.direction.", situation));
  }

  private static Situation situation(Task task) {
    Chance chance = task.chance();
    Setting setting = chance.pick(SETTINGS);
    Travel travel = chance.oneIn(2) ? Travel.WITH : Travel.AGAINST;
    Bearing buoyage = Drawn.bearing(chance);
    Bearing heading = Drawn.heading(travel, buoyage, chance);
    Bearing along = setting == Setting.COAST ? null : opposed(travel, heading, chance);
    return new Situation(heading, travel, buoyage, task.time(), View.NEAR, null, setting, along);
  }

  /** A direction along the coast to which the heading lies the other way. */
  private static Bearing opposed(Travel travel, Bearing heading, Chance chance) {
    return Drawn.heading(travel == Travel.WITH ? Travel.AGAINST : Travel.WITH, heading, chance);
  }

  private static Message words(String prefix, Situation situation) {
    Setting setting = situation.setting();
    Bearing buoyage = situation.buoyage();
    if (setting == null || buoyage == null) {
      throw new IllegalStateException("a direction is asked in a setting that has one");
    }
    @Nullable Bearing along = situation.general();
    return Message.of(
        prefix + setting.id(),
        situation.heading(),
        buoyage,
        along == null ? buoyage : along,
        Math.round(buoyage.angleTo(situation.heading())),
        Message.of("travelling." + situation.travel().id()));
  }
}
