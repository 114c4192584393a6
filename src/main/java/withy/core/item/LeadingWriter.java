package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.mark.MarkRule;
import withy.core.mark.Practice;
import withy.core.scenario.Scenario;
import withy.core.scenario.TimeOfDay;
import withy.core.waterway.LeadingPair;
import withy.core.waterway.Steering;

/** Asks how to steer by leading marks ahead or astern, of which there may be three pairs. */
final class LeadingWriter implements ItemWriter {
  private static final int TRIES = 1000;

  /** All but the right one of the three ways to steer. */
  private static final int ENOUGH = 2;

  @Override
  public Form form() {
    return Form.LEADING;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.LEADING_LINE;
  }

  @Override
  public Draft write(Task task) {
    Steering wanted = task.chance().pick(List.of(Steering.values()));
    for (int i = 0; i < TRIES; i++) {
      Scenario scenario = LeadingLayout.drawn(task, wanted);
      Steering key = key(scenario);
      Distractors wrong = Distractors.of(task, Form.LEADING, scenario, key.id());
      if (wrong.count() == ENOUGH && misleads(scenario, key)) {
        return draft(scenario, key, wrong);
      }
    }
    throw new IllegalStateException("no leading marks leave the ways to steer open");
  }

  private static Steering key(Scenario scenario) {
    return marks(scenario)
        .steering(heading(scenario))
        .orElseThrow(() -> new IllegalStateException("marks are in line or clearly out of it"));
  }

  /** Whether the nearest of the other pairs, if there are any, asks for another way to steer. */
  private static boolean misleads(Scenario scenario, Steering key) {
    return !several(scenario) || LeadingBeliefs.wrongLead(scenario) != key;
  }

  private static Draft draft(Scenario scenario, Steering key, Distractors wrong) {
    return new Draft(
        Form.LEADING,
        List.of(Concept.LEADING_LINE),
        scenario,
        prompt(scenario),
        new Option(key.id(), Words.term(key), null, null),
        wrong.options(value -> Words.term(Term.parse(Steering.class, value))),
        explanation(scenario, key));
  }

  private static Message prompt(Scenario scenario) {
    String sight =
        several(scenario) ? "three" : marks(scenario).ahead(heading(scenario)) ? "ahead" : "astern";
    return Message.of(
        "prompt.leading." + sight + "." + scenario.situation().view().id(),
        heading(scenario),
        charted(scenario));
  }

  private static Message explanation(Scenario scenario, Steering key) {
    Message rule = rule(scenario, key);
    return several(scenario)
        ? Message.of(MarkRule.LEADING_LINE_CHARTED.messageKey(), charted(scenario), rule)
        : rule;
  }

  private static Message rule(Scenario scenario, Steering key) {
    if (key == Steering.ON_THE_LINE) {
      return Message.of(MarkRule.LEADING_MARKS_IN_LINE.messageKey());
    }
    MarkRule rule =
        marks(scenario).ahead(heading(scenario))
            ? MarkRule.LEADING_STEER_TO_FRONT_MARK
            : MarkRule.LEADING_ASTERN_REVERSED;
    return Message.of(rule.messageKey() + "." + (marks(scenario).opening() < 0 ? "left" : "right"));
  }

  private static boolean several(Scenario scenario) {
    return scenario.marks().size() > 2;
  }

  private static LeadingPair marks(Scenario scenario) {
    return LeadingBeliefs.pair(scenario, 0);
  }

  private static Bearing heading(Scenario scenario) {
    return scenario.situation().heading();
  }

  private static Bearing charted(Scenario scenario) {
    @Nullable Bearing lead = scenario.mark().lead();
    if (lead == null) {
      throw new IllegalStateException("the chart gives the bearing of a leading line");
    }
    return lead;
  }
}
