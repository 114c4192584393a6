package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.light.Rhythm;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks for the character of a light that is seen at its true rhythm. */
final class LightWriter implements ItemWriter {
  private static final double MILLIS = 1000;

  @Override
  public Form form() {
    return Form.LIGHT;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.LIGHT_CHARACTER && time == TimeOfDay.NIGHT;
  }

  @Override
  public Draft write(Task task) {
    Scenario scenario = scenario(task);
    LightCharacter light = shown(scenario);
    String key = LightBeliefs.value(light);
    return new Draft(
        Form.LIGHT,
        List.of(Concept.LIGHT_CHARACTER),
        scenario,
        Message.of("prompt.light"),
        new Option(key, text(key), null, null),
        Distractors.of(task, Form.LIGHT, scenario, key).options(LightWriter::text),
        explanation(light));
  }

  private static Scenario scenario(Task task) {
    Bearing heading = Drawn.bearing(task.chance());
    SightedMark mark =
        Drawn.ahead(task, task.chance().pick(lit(task.practice())), View.LIGHT, heading);
    Situation situation =
        new Situation(heading, Travel.NONE, null, task.time(), View.LIGHT, null, null, null);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  /** The floating marks whose light tells them. */
  private static List<MarkDescription> lit(Practice practice) {
    List<MarkDescription> lit = new ArrayList<>();
    for (MarkDescription each : practice.marks()) {
      if (!each.look().isFixed() && !Sights.of(practice, each, View.LIGHT).isEmpty()) {
        lit.add(each);
      }
    }
    return lit;
  }

  private static LightCharacter shown(Scenario scenario) {
    @Nullable LightCharacter light = scenario.mark().appearance().light();
    if (light == null) {
      throw new IllegalStateException("a mark that is asked about at night is lit");
    }
    return light;
  }

  /** A character reads the same in every language. */
  private static Message text(String value) {
    return Message.of("option.light", value.replace('_', ' '));
  }

  private static Message explanation(LightCharacter light) {
    Rhythm rhythm = light.rhythm();
    return Message.of(
        "rule.light." + rhythm.lightClass().id(),
        light.shortNotation(),
        rhythm.group().isEmpty() ? 0 : rhythm.group().get(0),
        light.timeline().periodMillis().orElse(0) / MILLIS);
  }
}
