package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.ChannelIntent;
import withy.core.mark.Practice;
import withy.core.mark.Region;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * Asks on which side to leave each of the marks that a boat meets in a stretch of water. Inbound
 * and outbound follow one another by rule, inbound first: there swapped regions alone go wrong, so
 * that what goes wrong outbound afterwards tells them from a forgotten direction.
 */
final class PassageWriter implements ItemWriter {
  private static final List<Blueprint> WATERS =
      List.of(
          Blueprint.HARBOUR_ENTRANCE,
          Blueprint.RIVER,
          Blueprint.ESTUARY,
          Blueprint.FORK,
          Blueprint.FORK,
          Blueprint.COASTAL_PASSAGE);

  /** As many marks as make a passage, and as many as one keeps in view; ours, no source. */
  static final int FEWEST = 3;

  static final int MOST = 6;

  @Override
  public Form form() {
    return Form.PASSAGE;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.PASSAGE && time == TimeOfDay.DAY;
  }

  @Override
  public boolean measuresIn(
      SurveyedWater water, Concept concept, Practice practice, TimeOfDay time) {
    for (Travel each : List.of(Travel.WITH, Travel.AGAINST)) {
      Task task = new Task(practice, concept, time, 0, Chance.of(0, 0), water);
      if (drawn(task, task.water(WATERS), each).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  @Override
  public Draft write(Task task) {
    Travel travel = task.index() % 2 == 0 ? Travel.WITH : Travel.AGAINST;
    return task.found(WATERS, water -> drawn(task, water, travel));
  }

  /** A passage through a water, past as many marks as chance has it and the water bears out. */
  private static Optional<Draft> drawn(Task task, Waterway water, Travel travel) {
    int wanted = task.chance().between(FEWEST + 1, MOST);
    for (PassageRoute route : task.chance().shuffled(PassageRoute.of(water, travel))) {
      for (int count = wanted; count >= FEWEST; count--) {
        int windows = route.marks().size() - count + 1;
        int begin = windows > 0 ? task.chance().below(windows) : 0;
        for (int i = 0; i < windows; i++) {
          int first = (begin + i) % windows;
          PassagePlan plan = PassagePlan.of(water, route, first, first + count - 1);
          Optional<Draft> draft = draft(task, plan);
          if (draft.isPresent()) {
            return draft;
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Draft> draft(Task task, PassagePlan plan) {
    return plan.begins()
        ? PassageLegs.of(task, plan)
            .map(passage -> draft(task, plan, passage))
            .filter(draft -> isAhead(draft.scenario()))
        : Optional.empty();
  }

  private static boolean isAhead(Scenario scenario) {
    return scenario.mark().bearing().angleTo(scenario.situation().heading()) <= Afloat.AHEAD;
  }

  private static Draft draft(Task task, PassagePlan plan, Passage passage) {
    @Nullable PlacedMark fork = plan.fork();
    List<Concept> concepts = new ArrayList<>(List.of(Concept.PASSAGE, Concept.LATERAL_SIDE));
    if (fork != null) {
      concepts.add(Concept.PREFERRED_CHANNEL);
    }
    Travel travel = plan.route().travel();
    Region region = task.practice().region();
    Message prompt =
        fork == null
            ? Message.of("prompt.passage." + travel.id(), region, passage.legs().size())
            : Message.of(
                "prompt.passage." + travel.id() + ".fork",
                region,
                passage.legs().size(),
                wanting(plan.route()));
    Message rule =
        Message.of(
            "rule.passage." + travel.id(), region, region.portHand(), region.starboardHand());
    return new Draft(
        Form.PASSAGE,
        concepts,
        scenario(task, plan, passage),
        prompt,
        passage,
        fork == null
            ? rule
            : Message.of(
                "rule.passage.fork",
                rule,
                ChannelChoiceWriter.explanation(PassageLegs.scenario(task, plan.route(), fork))));
  }

  private static Message wanting(PassageRoute route) {
    ChannelIntent intent = route.intent();
    return Message.of("wanting." + (intent == null ? ChannelIntent.PREFERRED : intent).id());
  }

  private static Scenario scenario(Task task, PassagePlan plan, Passage passage) {
    Position boat = passage.way().track().start();
    Bearing heading = Afloat.whole(passage.way().track().bearingAt(1));
    Travel travel = plan.route().travel();
    Bearing buoyage = travel == Travel.WITH ? heading : heading.reciprocal();
    @Nullable ChannelIntent intent = plan.fork() == null ? null : plan.route().intent();
    Situation situation =
        new Situation(heading, travel, buoyage, TimeOfDay.DAY, View.NEAR, intent, null, null);
    return new Afloat(task.practice(), plan.water(), boat, heading).before(plan.marks(), situation);
  }
}
