package withy.core.item;

import java.util.List;
import java.util.Optional;
import withy.core.geometry.Bearing;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.mark.Structure;
import withy.core.mark.Topmark;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks which kind of mark is seen: near by, from afar as a silhouette, or by its light. */
final class IdentifyWriter implements ItemWriter {
  /** Draws before an item with two options is let pass; ours, no source. */
  private static final int TRIES = 8;

  /** Wrong options that an item should have. */
  private static final int ENOUGH = 2;

  @Override
  public Form form() {
    return Form.IDENTIFY;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return !marks(concept, practice, time).isEmpty();
  }

  /** The marks about which a concept is asked. */
  private static List<MarkDescription> marks(Concept concept, Practice practice, TimeOfDay time) {
    View view = time == TimeOfDay.DAY ? View.NEAR : View.LIGHT;
    return practice.marks(
        each ->
            Groups.told(each.group(), time) == concept
                && isNamed(practice, each)
                && !Sights.of(practice, each, view).isEmpty());
  }

  /**
   * Whether the name of its kind says what it is: withies show it by a rag alone, and a board that
   * only shows the place is more than the information for which its kind stands.
   */
  private static boolean isNamed(Practice practice, MarkDescription mark) {
    boolean asItsKind =
        practice.mark(mark.kind()).map(MarkDescription::demand).equals(Optional.of(mark.demand()));
    return asItsKind && mark.isToldByLook() && !mark.look().structures().contains(Structure.WITHY);
  }

  @Override
  public Draft write(Task task) {
    MarkDescription mark = task.chance().pick(marks(task.concept(), task.practice(), task.time()));
    Scenario scenario = scenario(task, mark);
    Distractors distractors = distractors(task, scenario);
    for (int i = 0; i < TRIES && distractors.count() < ENOUGH; i++) {
      scenario = scenario(task, mark);
      distractors = distractors(task, scenario);
    }
    return draft(task, scenario, distractors);
  }

  private static Draft draft(Task task, Scenario scenario, Distractors distractors) {
    MarkKind kind = scenario.mark().kind();
    return new Draft(
        Form.IDENTIFY,
        List.of(task.concept()),
        scenario,
        Message.of("prompt.identify." + scenario.situation().view().id(), task.practice().region()),
        new Option(kind.id(), named(scenario, kind), null, null),
        distractors.options(value -> named(scenario, new MarkKind(value))),
        KindExplanation.of(scenario));
  }

  /** A beacon or daybeacon is asked for among such, as far as the practice has them. */
  private static Message named(Scenario scenario, MarkKind kind) {
    Practice practice = scenario.practice();
    if (scenario.described().group() == MarkGroup.FIXED) {
      for (MarkDescription each : practice.marks()) {
        if (each.group() == MarkGroup.FIXED && each.kind().equals(kind)) {
          return Words.name(each);
        }
      }
    }
    return Words.mark(practice, kind);
  }

  private static Distractors distractors(Task task, Scenario scenario) {
    return Distractors.of(task, Form.IDENTIFY, scenario, scenario.mark().kind().id())
        .without(alsoPossible(scenario));
  }

  /** Kinds that would look the same, so that to name them would be no error. */
  static List<String> alsoPossible(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    Topmark topmark = seen.topmark();
    List<MarkKind> possible =
        switch (scenario.situation().view()) {
          case NEAR -> Recognition.possibleByDay(scenario.practice(), seen);
          case DISTANT ->
              Recognition.bySilhouette(
                  scenario.practice(), seen.body(), topmark == null ? null : topmark.shape());
          case LIGHT -> List.of();
        };
    return possible.stream().map(MarkKind::id).toList();
  }

  private static Scenario scenario(Task task, MarkDescription described) {
    View view = view(task, described);
    Bearing heading = Drawn.bearing(task.chance());
    SightedMark mark = Drawn.ahead(task, described, view, heading);
    Situation situation = Situation.steering(heading, task.time(), view);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  /** The silhouette of a mark with a hand does not tell it from one at a junction. */
  private static View view(Task task, MarkDescription mark) {
    if (task.time() == TimeOfDay.NIGHT) {
      return View.LIGHT;
    }
    boolean told =
        !mark.kind().isLateral()
            && !mark.kind().isPreferredChannel()
            && !Sights.of(task.practice(), mark, View.DISTANT).isEmpty();
    return told && task.chance().oneIn(2) ? View.DISTANT : View.NEAR;
  }
}
