package withy.core.item;

import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.light.Rhythm;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/**
 * Asks about the light of a mark, at its true rhythm: which character it has, which of several
 * rhythms a character stands for, which of several lights the chart says, which mark shows it.
 */
final class LightWriter implements ItemWriter {
  private static final double MILLIS = 1000;

  /** Lights in a scene from which one is to be found. */
  private static final int LEAST_IN_SIGHT = 3;

  @Override
  public Form form() {
    return Form.LIGHT;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return time == TimeOfDay.NIGHT
        && (concept == Concept.LIGHT_CHARACTER || !marks(concept, practice).isEmpty());
  }

  /** The floating marks whose light tells them, where naming one is to measure the concept. */
  private static List<MarkDescription> marks(Concept concept, Practice practice) {
    boolean told = concept == Concept.LATERAL_LIGHT || concept == Concept.CARDINAL_LIGHT;
    return practice.marks(
        each ->
            told && isLit(practice, each) && Groups.told(each.group(), TimeOfDay.NIGHT) == concept);
  }

  @Override
  public Draft write(Task task) {
    if (task.concept() != Concept.LIGHT_CHARACTER) {
      return mark(task);
    }
    Scenario scenario = scenario(task, lit(task.practice()));
    int drawn = task.chance().below(8);
    return drawn < 3 ? character(task, scenario) : drawn < 6 ? rhythm(task, scenario) : which(task);
  }

  /** From the rhythm to the character. */
  private static Draft character(Task task, Scenario scenario) {
    String key = LightBeliefs.value(scenario.mark().light());
    return draft(
        task,
        scenario,
        Message.of("prompt.light"),
        new Option(key, Words.light(key), null, null).showing(LightBeliefs.read(key)),
        showing(Distractors.of(task, Form.LIGHT, scenario, key).options(Words::light)));
  }

  /** From the character to the rhythm, among strips. */
  private static Draft rhythm(Task task, Scenario seen) {
    Scenario scenario = seen.asking(LightQuestion.RHYTHM);
    String key = LightBeliefs.value(scenario.mark().light());
    List<Option> wrong =
        Distractors.of(task, Form.LIGHT, scenario, key).options(LightWriter::inSeconds);
    return draft(
        task,
        scenario,
        Message.of("prompt.light.rhythm", scenario.mark().light().shortNotation()),
        new Option(key, inSeconds(key), null, null).showing(LightBeliefs.read(key)),
        showing(wrong));
  }

  private static List<Option> showing(List<Option> options) {
    return options.stream().map(each -> each.showing(LightBeliefs.read(each.value()))).toList();
  }

  /** From the character on the chart to one of several lights in sight. */
  private static Draft which(Task task) {
    Scenario scenario = inSight(task);
    String key = LightScene.value(scenario.mark());
    List<Option> wrong =
        Distractors.of(task, Form.LIGHT, scenario, key).options(LightWriter::bearing);
    return draft(
        task,
        scenario,
        Message.of("prompt.light.which", scenario.mark().light().shortNotation()),
        seen(new Option(key, bearing(key), null, null), scenario),
        wrong.stream().map(each -> seen(each, scenario)).toList());
  }

  private static Scenario inSight(Task task) {
    Scenario scenario;
    do {
      scenario = LightScene.around(task, scenario(task, lit(task.practice())));
    } while (scenario.marks().size() < LEAST_IN_SIGHT);
    return scenario;
  }

  private static Option seen(Option option, Scenario scenario) {
    return scenario.marks().stream()
        .filter(each -> LightScene.value(each).equals(option.value()))
        .findFirst()
        .map(each -> option.showing(each.light()))
        .orElseThrow();
  }

  private static Message bearing(String value) {
    Bearing bearing = Bearing.of(Integer.parseInt(value.substring(value.indexOf('-') + 1)));
    return Message.of("option.light-bearing", bearing);
  }

  /** From the light to the mark that shows it. */
  private static Draft mark(Task task) {
    List<MarkDescription> marks = marks(task.concept(), task.practice());
    Scenario scenario;
    Distractors wrong;
    do {
      scenario = scenario(task, marks).asking(LightQuestion.MARK);
      wrong = Distractors.of(task, Form.IDENTIFY, scenario, scenario.mark().kind().id());
    } while (wrong.count() < 2);
    MarkKind kind = scenario.mark().kind();
    return new Draft(
        Form.LIGHT,
        List.of(task.concept(), Concept.LIGHT_CHARACTER),
        scenario,
        Message.of("prompt.light.mark", task.practice().region()),
        new Option(kind.id(), Words.mark(task.practice(), kind), null, null),
        wrong.options(value -> Words.mark(task.practice(), new MarkKind(value))),
        KindExplanation.of(scenario));
  }

  private static Draft draft(
      Task task, Scenario scenario, Message prompt, Option right, List<Option> wrong) {
    return new Draft(
        Form.LIGHT,
        List.of(task.concept()),
        scenario,
        prompt,
        right,
        wrong,
        explanation(scenario.mark().light()));
  }

  private static Scenario scenario(Task task, List<MarkDescription> marks) {
    Bearing heading = Drawn.bearing(task.chance());
    SightedMark mark = Drawn.ahead(task, task.chance().pick(marks), View.LIGHT, heading);
    Situation situation = Situation.steering(heading, task.time(), View.LIGHT);
    return new Scenario(task.practice(), situation, List.of(mark));
  }

  /** The floating marks whose light tells them. */
  private static List<MarkDescription> lit(Practice practice) {
    return practice.marks(each -> isLit(practice, each));
  }

  private static boolean isLit(Practice practice, MarkDescription mark) {
    return !mark.look().isFixed() && !Sights.of(practice, mark, View.LIGHT).isEmpty();
  }

  private static Message inSeconds(String value) {
    return Message.of("option.rhythm", LightBeliefs.read(value));
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
