package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Demand;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.Practice;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks what a mark seen near by asks of the mariner. */
final class RegulatoryWriter implements ItemWriter {
  @Override
  public Form form() {
    return Form.REGULATORY;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return time == TimeOfDay.DAY && !marks(concept, practice).isEmpty();
  }

  /** The marks about which a concept is asked: one that only the chart tells is named. */
  private static List<MarkDescription> marks(Concept concept, Practice practice) {
    return practice.marks(each -> isTold(practice, each) && asked(each) == concept);
  }

  private static boolean isTold(Practice practice, MarkDescription mark) {
    return mark.chartTells() || !Sights.of(practice, mark, View.NEAR).isEmpty();
  }

  /** River marks of a hand are asked for their side. */
  private static @Nullable Concept asked(MarkDescription mark) {
    boolean hand = mark.kind().isLateral() && mark.group() != MarkGroup.PRIVATE;
    return hand ? null : Groups.asked(mark.group());
  }

  @Override
  public Draft write(Task task) {
    MarkDescription mark = task.chance().pick(marks(task.concept(), task.practice()));
    Scenario scenario = scenario(task, mark);
    Demand key = Demands.of(scenario);
    List<Option> wrong =
        Distractors.of(task, Form.REGULATORY, scenario, key.id())
            .without(Demands.alsoRight(scenario))
            .options(value -> Words.term(new Demand(value)));
    return new Draft(
        Form.REGULATORY,
        List.of(task.concept()),
        scenario,
        prompt(scenario, mark),
        new Option(key.id(), Words.term(key), null, null),
        wrong,
        Message.of("rule.mark-asks", Message.of(mark.lookKey()), Message.of(mark.meaningKey())));
  }

  /** A private buoy says itself what it is. */
  private static Message prompt(Scenario scenario, MarkDescription mark) {
    if (mark.group() == MarkGroup.PRIVATE) {
      return Message.of("prompt.regulatory.private");
    }
    return mark.chartTells()
        ? Message.of("prompt.regulatory.charted", Words.name(mark))
        : Message.of("prompt.regulatory", scenario.practice().region());
  }

  private static Scenario scenario(Task task, MarkDescription described) {
    Bearing heading = Drawn.bearing(task.chance());
    SightedMark mark =
        described.chartTells()
            ? Drawn.charted(task, described, heading)
            : Drawn.ahead(task, described, View.NEAR, heading);
    Situation situation = Situation.steering(heading, task.time(), View.NEAR);
    return new Scenario(task.practice(), situation, List.of(mark));
  }
}
