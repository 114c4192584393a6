package withy.core.item;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.Practice;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/**
 * Has a mark put together from parts: its shape where that tells, its colours, topmark and light.
 * The wrong parts are those of the marks for which beliefs take it.
 */
final class AssembleWriter implements ItemWriter {
  /** Far enough that the mark is not in sight of what it does not show. */
  private static final double DISTANCE = 300;

  @Override
  public Form form() {
    return Form.ASSEMBLE;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return time == TimeOfDay.DAY && !marks(concept, practice).isEmpty();
  }

  /** The marks of the system; of national ones colours and symbol say all. */
  private static List<MarkDescription> marks(Concept concept, Practice practice) {
    return practice.marks(
        each ->
            each.group().compareTo(MarkGroup.NEW_DANGER) <= 0
                && Groups.told(each.group(), TimeOfDay.DAY) == concept);
  }

  @Override
  public Draft write(Task task) {
    MarkDescription mark = task.chance().pick(marks(task.concept(), task.practice()));
    Scenario scenario = scenario(task, mark);
    Map<Feature, Part> right = Parts.of(mark.look(), scenario.mark().appearance());
    WrongParts wrong = WrongParts.of(task, scenario, mark, right);
    return new Draft(
        Form.ASSEMBLE,
        List.of(task.concept()),
        scenario,
        Message.of("prompt.assemble", Words.name(mark), task.practice().region()),
        new Assembly(wrong.slots(), values(right), wrong.beliefs()),
        explanation(mark, scenario));
  }

  /** Which colour a hand has only the region tells; of other marks their look says all. */
  private static Message explanation(MarkDescription mark, Scenario scenario) {
    boolean hand = mark.kind().isLateral() || mark.kind().isPreferredChannel();
    LightCharacter light = scenario.mark().light();
    return Message.of(
        "rule.assembled",
        hand ? KindExplanation.of(scenario) : Message.of(mark.lookKey()),
        light.shortNotation());
  }

  private static Map<Feature, String> values(Map<Feature, Part> parts) {
    Map<Feature, String> values = new LinkedHashMap<>();
    parts.forEach((feature, part) -> values.put(feature, part.value()));
    return values;
  }

  /** The mark as it is when put together rightly, which nobody sees before the answer. */
  private static Scenario scenario(Task task, MarkDescription mark) {
    Bearing heading = Drawn.bearing(task.chance());
    Situation situation = Situation.steering(heading, task.time(), View.NEAR);
    Appearance right = Parts.whole(mark.look(), task.chance().pick(mark.look().lights()));
    SightedMark sighted = new SightedMark(mark.kind(), heading, DISTANCE, null, right);
    return new Scenario(task.practice(), situation, List.of(sighted));
  }
}
