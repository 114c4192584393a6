package withy.core.item;

import java.util.List;
import withy.core.Term;
import withy.core.hydrography.Blueprint;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.Travel;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.TimeOfDay;

/**
 * Asks on which side of a mark the water is, where the mark serves another channel than the boat's:
 * the soundings decide, and say the opposite of the rule.
 */
final class ChartOverRuleWriter implements ItemWriter {
  private static final List<Blueprint> WATERS = List.of(Blueprint.NEIGHBOURING_CHANNELS);

  @Override
  public Form form() {
    return Form.CHART_OVER_RULE;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.CHART_OVER_RULE && time == TimeOfDay.DAY;
  }

  @Override
  public Draft write(Task task) {
    Scenario scenario = scenario(task);
    Side key = key(scenario);
    List<Option> wrong =
        Distractors.of(task, Form.CHART_OVER_RULE, scenario, key.id())
            .options(value -> Words.term(Term.parse(Side.class, value)));
    return new Draft(
        Form.CHART_OVER_RULE,
        List.of(Concept.CHART_OVER_RULE, Concept.LATERAL_SIDE),
        scenario,
        prompt(scenario),
        sailed(new Option(key.id(), Words.term(key), null, null), scenario),
        wrong.stream().map(each -> sailed(each, scenario)).toList(),
        explanation(scenario, key));
  }

  /** As often inbound as outbound, as the waters allow it. */
  private static Scenario scenario(Task task) {
    Travel wanted = task.chance().oneIn(2) ? Travel.WITH : Travel.AGAINST;
    Travel other = wanted == Travel.WITH ? Travel.AGAINST : Travel.WITH;
    return task.found(
        WATERS,
        water ->
            OtherChannel.in(task.practice(), water, wanted, task.chance())
                .or(() -> OtherChannel.in(task.practice(), water, other, task.chance())));
  }

  /** The side on which the depths keep the boat off the ground. */
  private static Side key(Scenario scenario) {
    Side port = Side.LEAVE_TO_PORT;
    return Afloat.KEEL.isSafe(OtherChannel.way(scenario, port).leastDepth())
        ? port
        : port.opposite();
  }

  private static Option sailed(Option option, Scenario scenario) {
    return option.sailing(OtherChannel.way(scenario, Term.parse(Side.class, option.value())));
  }

  private static Message prompt(Scenario scenario) {
    Sailing sailing = Afloat.sailing(scenario);
    return Message.of(
        "prompt.chart-over-rule",
        WaterWords.asked(scenario.mark()),
        scenario.mark().bearing(),
        sailing.water().tide(),
        sailing.keel().draught(),
        sailing.keel().margin());
  }

  private static Message explanation(Scenario scenario, Side key) {
    return Message.of(
        "rule.chart-over-rule",
        Words.left(key),
        WaterWords.least(OtherChannel.way(scenario, key)),
        WaterWords.least(OtherChannel.way(scenario, key.opposite())));
  }
}
