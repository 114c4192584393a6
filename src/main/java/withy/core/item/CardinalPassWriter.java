package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.mark.CardinalRules;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks where to pass a cardinal mark ahead, and so on which side it is left. */
final class CardinalPassWriter implements ItemWriter {
  private static final List<Quadrant> QUADRANTS = List.of(Quadrant.values());

  @Override
  public Form form() {
    return Form.CARDINAL_PASS;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.CARDINAL_SIDE && MarkingRules.has(practice, MarkKind.NORTH_CARDINAL);
  }

  @Override
  public Draft write(Task task) {
    boolean water = task.time() == TimeOfDay.DAY && task.chance().oneIn(3);
    Scenario scenario = water ? CardinalWaters.drawn(task) : scenario(task);
    Quadrant pass = CardinalRules.pass(scenario.mark().kind());
    List<Option> options = new ArrayList<>(4);
    for (Quadrant each : QUADRANTS) {
      options.add(option(each, scenario));
    }
    Option right = options.get(pass.ordinal());
    List<Option> wrong =
        Distractors.of(task, Form.CARDINAL_PASS, scenario, right.value())
            .options(value -> text(value, options));
    return new Draft(
        Form.CARDINAL_PASS,
        concepts(task),
        scenario,
        Message.of(
            "prompt.cardinal-pass." + scenario.situation().view().id(),
            scenario.situation().heading()),
        SailedOptions.sailed(right, scenario),
        SailedOptions.sailed(wrong, scenario),
        explanation(scenario, pass));
  }

  private static List<Concept> concepts(Task task) {
    return List.of(
        Concept.CARDINAL_SIDE,
        task.time() == TimeOfDay.DAY ? Concept.CARDINAL_IDENTITY : Concept.CARDINAL_LIGHT);
  }

  private static Scenario scenario(Task task) {
    Chance chance = task.chance();
    Bearing heading = Drawn.bearing(chance);
    View view =
        task.time() == TimeOfDay.NIGHT ? View.LIGHT : chance.oneIn(3) ? View.DISTANT : View.NEAR;
    MarkKind kind = MarkKind.cardinal(chance.pick(QUADRANTS));
    SightedMark mark = Drawn.ahead(task, kind, view, heading);
    Situation situation = Situation.steering(heading, task.time(), view);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  /** The way through a quadrant, with the hand on which the mark is then left if it has one. */
  private static Option option(Quadrant quadrant, Scenario scenario) {
    Optional<Side> hand = CardinalRules.hand(quadrant, scenario.situation().heading());
    Message text =
        hand.isPresent()
            ? Message.of("option.pass-on-hand", quadrant, Words.left(hand.get()))
            : Message.of("option.pass", quadrant);
    return new Option("pass-" + quadrant.id(), text, null, null);
  }

  private static Message text(String value, List<Option> options) {
    for (Option each : options) {
      if (each.value().equals(value)) {
        return each.text();
      }
    }
    throw new IllegalArgumentException(value + " is no way to pass");
  }

  private static Message explanation(Scenario scenario, Quadrant pass) {
    Bearing heading = scenario.situation().heading();
    Message mark = Words.mark(scenario);
    return CardinalRules.hand(pass, heading)
        .map(
            hand ->
                Message.of(
                    MarkRule.CARDINAL_HAND_FROM_HEADING.messageKey(),
                    mark,
                    pass,
                    heading,
                    Words.left(hand)))
        .orElse(Message.of(MarkRule.CARDINAL_PASS_NAMED_SIDE.messageKey(), mark, pass));
  }
}
