package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.mark.Practice;
import withy.core.scenario.Clearance;
import withy.core.scenario.PlottedTrack;
import withy.core.scenario.PlottedTrack.Purpose;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.TimeOfDay;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;

/** Asks which of several tracks clears a danger, or how far off one passes. */
final class ClearanceWriter implements ItemWriter {
  /** Cables that an answer may be off: about what dividers and a scale bar give. */
  private static final double TOLERANCE = 0.2;

  @Override
  public Form form() {
    return Form.CLEARANCE;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.CLEARANCE && time == TimeOfDay.DAY;
  }

  @Override
  public Draft write(Task task) {
    if (!task.chance().oneIn(3)) {
      return choice(task, ClearanceScene.drawn(task, true));
    }
    Draft draft;
    do {
      draft = number(task, ClearanceScene.drawn(task, false));
    } while (!isTelling(draft));
    return draft;
  }

  private static boolean isTelling(Draft draft) {
    return draft.answer() instanceof Quantity quantity && !quantity.beliefs().isEmpty();
  }

  /** Whether the chart shows the danger itself as a sign to which one can measure. */
  static boolean hasSign(Danger danger) {
    return danger.kind() == DangerKind.ROCK || danger.kind() == DangerKind.WRECK;
  }

  private static Draft choice(Task task, Scenario scenario) {
    Sailing sailing = Afloat.sailing(scenario);
    Clearance drawn = clearance(scenario);
    PlottedTrack clear = drawn.track(Purpose.CLEAR).orElseThrow();
    List<Option> wrong =
        Distractors.of(task, Form.CLEARANCE, scenario, ClearanceBeliefs.value(clear.letter()))
            .options(ClearanceWriter::text);
    List<Option> sailed = new ArrayList<>();
    for (Option each : wrong) {
      sailed.add(sailed(each, sailing, drawn));
    }
    String key = ClearanceBeliefs.value(clear.letter());
    return new Draft(
        Form.CLEARANCE,
        List.of(Concept.CLEARANCE),
        scenario,
        Message.of(
            "prompt.clearance.track",
            cables(drawn.cables()),
            sailing.water().tide(),
            sailing.keel().draught(),
            sailing.keel().margin()),
        sailed(new Option(key, text(key), null, null), sailing, drawn),
        sailed,
        Message.of(
            "rule.clearance.track",
            clear.letter(),
            cables(down(drawn.off(clear.line()))),
            WaterWords.least(TracksPast.way(sailing.water(), drawn, clear))));
  }

  private static Option sailed(Option option, Sailing sailing, Clearance drawn) {
    for (PlottedTrack each : drawn.tracks()) {
      if (ClearanceBeliefs.value(each.letter()).equals(option.value())) {
        return option.sailing(TracksPast.way(sailing.water(), drawn, each));
      }
    }
    throw new IllegalStateException("no track is " + option.value());
  }

  private static Draft number(Task task, Scenario scenario) {
    Clearance drawn = clearance(scenario);
    Position target = ClearanceBeliefs.target(drawn);
    double metres = drawn.tracks().get(0).line().foot(target).distance();
    String key = ClearanceBeliefs.word(metres / Clearance.CABLE);
    String what = hasSign(drawn.danger()) ? drawn.danger().kind().id() : "mark";
    return new Draft(
        Form.CLEARANCE,
        List.of(Concept.CLEARANCE),
        scenario,
        Message.of("prompt.clearance.number", Message.of("cleared." + what), TOLERANCE),
        Quantity.of(
            Unit.CABLES,
            Double.parseDouble(key),
            TOLERANCE,
            Distractors.of(task, Form.CLEARANCE, scenario, key).numbers()),
        Message.of(
            "rule.clearance.number",
            Message.of("cleared." + what),
            cables(Double.parseDouble(key)),
            Math.rint(metres / 10) * 10));
  }

  private static Clearance clearance(Scenario scenario) {
    @Nullable Clearance drawn = Afloat.sailing(scenario).clearance();
    if (drawn == null) {
      throw new IllegalStateException("no tracks are drawn");
    }
    return drawn;
  }

  private static Message text(String value) {
    return Message.of(
        Choice.LETTERED, value.substring(value.length() - 1).toUpperCase(Locale.ROOT));
  }

  /** Whole tenths of a cable in some metres. */
  private static double down(double metres) {
    return Math.floor(10 * metres / Clearance.CABLE) / 10;
  }

  private static Message cables(double count) {
    return Message.of(count == 1 ? "cables.one" : "cables.more", count);
  }
}
