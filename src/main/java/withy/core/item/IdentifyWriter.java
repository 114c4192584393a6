package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Recognition;
import withy.core.mark.Topmark;
import withy.core.mark.Travel;
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
    return !kinds(concept, practice, time).isEmpty();
  }

  /** The kinds of mark about which a concept is asked. */
  private static List<MarkKind> kinds(Concept concept, Practice practice, TimeOfDay time) {
    List<MarkKind> kinds = new ArrayList<>();
    for (MarkKind each : MarkingRules.kinds(practice)) {
      if (concept == concept(each, time)) {
        kinds.add(each);
      }
    }
    return kinds;
  }

  private static Concept concept(MarkKind kind, TimeOfDay time) {
    boolean day = time == TimeOfDay.DAY;
    return switch (kind) {
      case PORT_HAND, STARBOARD_HAND -> day ? Concept.REGION : Concept.LATERAL_LIGHT;
      case PREFERRED_CHANNEL_TO_STARBOARD, PREFERRED_CHANNEL_TO_PORT -> Concept.PREFERRED_CHANNEL;
      case NORTH_CARDINAL, EAST_CARDINAL, SOUTH_CARDINAL, WEST_CARDINAL ->
          day ? Concept.CARDINAL_IDENTITY : Concept.CARDINAL_LIGHT;
      case ISOLATED_DANGER -> Concept.ISOLATED_DANGER;
      case SAFE_WATER -> Concept.SAFE_WATER;
      case SPECIAL -> Concept.SPECIAL_MARK;
      case EMERGENCY_WRECK -> Concept.EMERGENCY_WRECK;
    };
  }

  @Override
  public Draft write(Task task) {
    List<MarkKind> kinds = kinds(task.concept(), task.practice(), task.time());
    MarkKind kind = task.chance().pick(kinds);
    Scenario scenario = scenario(task, kind);
    Distractors distractors = distractors(task, scenario);
    for (int i = 0; i < TRIES && distractors.count() < ENOUGH; i++) {
      scenario = scenario(task, kind);
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
        new Option(kind.id(), Words.mark(task.practice(), kind), null, null),
        distractors.options(
            value -> Words.mark(task.practice(), Term.parse(MarkKind.class, value))),
        KindExplanation.of(scenario));
  }

  private static Distractors distractors(Task task, Scenario scenario) {
    return Distractors.of(task, Form.IDENTIFY, scenario, scenario.mark().kind().id())
        .without(alsoPossible(scenario));
  }

  /** Kinds that would look the same, so that to name them would be no error. */
  private static List<String> alsoPossible(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    Topmark topmark = seen.topmark();
    List<MarkKind> possible =
        switch (scenario.situation().view()) {
          case NEAR -> Recognition.byDay(scenario.practice(), seen);
          case DISTANT ->
              Recognition.bySilhouette(
                  scenario.practice(), seen.body(), topmark == null ? null : topmark.shape());
          case LIGHT -> List.of();
        };
    return possible.stream().map(MarkKind::id).toList();
  }

  private static Scenario scenario(Task task, MarkKind kind) {
    View view = view(task, kind);
    Bearing heading = Drawn.bearing(task.chance());
    SightedMark mark = Drawn.ahead(task, kind, view, heading);
    Situation situation =
        new Situation(heading, Travel.NONE, null, task.time(), view, null, null, null);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  /** The silhouette of a mark with a hand does not tell it from one at a junction. */
  private static View view(Task task, MarkKind kind) {
    if (task.time() == TimeOfDay.NIGHT) {
      return View.LIGHT;
    }
    boolean told =
        !kind.isLateral()
            && !kind.isPreferredChannel()
            && !Sight.of(task.practice(), kind, View.DISTANT).isEmpty();
    return told && task.chance().oneIn(2) ? View.DISTANT : View.NEAR;
  }
}
