package withy.core.item;

import java.util.List;
import withy.core.Chance;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks on which side to leave a preferred-channel mark for the channel that is wanted. */
final class ChannelChoiceWriter implements ItemWriter {
  private static final List<MarkKind> KINDS =
      List.of(MarkKind.PREFERRED_CHANNEL_TO_STARBOARD, MarkKind.PREFERRED_CHANNEL_TO_PORT);
  private static final List<ChannelIntent> INTENTS = List.of(ChannelIntent.values());

  @Override
  public Form form() {
    return Form.CHANNEL_CHOICE;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.PREFERRED_CHANNEL;
  }

  @Override
  public Draft write(Task task) {
    Scenario scenario = scenario(task);
    Side key = key(scenario);
    List<Option> wrong =
        SailedOptions.sailable(
                Distractors.of(task, Form.CHANNEL_CHOICE, scenario, key.id()), scenario)
            .options(value -> Words.term(Term.parse(Side.class, value)));
    return new Draft(
        Form.CHANNEL_CHOICE,
        List.of(Concept.PREFERRED_CHANNEL, Concept.LATERAL_SIDE),
        scenario,
        prompt(scenario.practice(), scenario.situation()),
        SailedOptions.sailed(new Option(key.id(), Words.term(key), null, null), scenario),
        SailedOptions.sailed(wrong, scenario),
        explanation(scenario));
  }

  private static Scenario scenario(Task task) {
    Chance chance = task.chance();
    Travel travel = chance.oneIn(2) ? Travel.WITH : Travel.AGAINST;
    if (task.time() == TimeOfDay.DAY && chance.oneIn(3)) {
      return JunctionWaters.drawn(task, travel, chance.pick(INTENTS));
    }
    Bearing buoyage = Drawn.bearing(chance);
    Bearing heading = Drawn.heading(travel, buoyage, chance);
    View view = task.time() == TimeOfDay.NIGHT ? View.LIGHT : View.NEAR;
    SightedMark mark = Drawn.ahead(task, chance.pick(KINDS), view, heading);
    Situation situation =
        new Situation(
            heading, travel, buoyage, task.time(), view, chance.pick(INTENTS), null, null);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  private static Side key(Scenario scenario) {
    Situation situation = scenario.situation();
    MarkKind kind = scenario.mark().kind();
    return SideRules.side(scenario.practice(), kind, situation.travel(), situation.intent())
        .orElseThrow(() -> new IllegalStateException(kind.id() + " has no side here"));
  }

  private static Message prompt(Practice practice, Situation situation) {
    return Message.of(
        "prompt.channel-choice." + situation.view().id(),
        practice.region(),
        Message.of("travelling." + situation.travel().id()),
        Message.of("wanting." + intent(situation).id()));
  }

  /** The rule that decides, for the mark of a scenario and the channel wanted. */
  static Message explanation(Scenario scenario) {
    Situation situation = scenario.situation();
    MarkKind kind = scenario.mark().kind();
    boolean preferred = intent(situation) == ChannelIntent.PREFERRED;
    MarkRule rule =
        preferred ? MarkRule.PREFERRED_CHANNEL_BODY_COLOUR : MarkRule.SECONDARY_CHANNEL_OPPOSITE;
    Side inbound =
        SideRules.side(scenario.practice(), kind, Travel.WITH, intent(situation))
            .orElse(Side.EITHER_SIDE);
    return Message.of(
        rule.messageKey() + "." + situation.travel().id(),
        scenario.practice().region(),
        Message.of(
            "junction." + situation.view().id(), scenario.mark().appearance().colours().get(0)),
        Words.left(inbound));
  }

  private static ChannelIntent intent(Situation situation) {
    ChannelIntent intent = situation.intent();
    if (intent == null) {
      throw new IllegalStateException("at a junction a channel is wanted");
    }
    return intent;
  }
}
