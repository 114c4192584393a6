package withy.core.item;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.light.Elevation;
import withy.core.light.LightCharacter;
import withy.core.mark.Practice;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;

/** Asks how far off a light comes over the horizon, or is seen in tonight's air. */
final class RangeWriter implements ItemWriter {
  /** The published coefficients of the horizon differ by 2.4 %. */
  private static final double TOLERANCE = 0.03;

  private static final double LEAST_TOLERANCE = 0.1;
  private static final int ENOUGH_BELIEFS = 2;

  private static final List<String> CHARACTERS =
      List.of("Fl W 5s", "Fl(2) W 10s", "Fl(3) W 15s", "Fl(4) W 20s", "Oc W 6s", "LFl W 10s");
  private static final List<Double> VISIBILITIES = List.of(1.0, 2.0, 5.0, 20.0);
  private static final List<String> EYES_IN_METRES = List.of("1.5", "2", "2.5", "3", "4", "5");
  private static final List<String> EYES_IN_FEET = List.of("5", "6", "8", "10", "12", "15");

  @Override
  public Form form() {
    return Form.LIGHT;
  }

  @Override
  public boolean measures(Concept concept, Practice practice, TimeOfDay time) {
    return concept == Concept.LIGHT_RANGE && time == TimeOfDay.NIGHT;
  }

  @Override
  public Draft write(Task task) {
    boolean tonight = !task.chance().oneIn(3);
    Situation situation = Situation.steering(Drawn.bearing(task.chance()), task.time(), View.LIGHT);
    Draft draft;
    do {
      RangeLookout lookout = tonight ? tonight(task) : lookout(task, null);
      draft = draft(task, new Scenario(task.practice(), situation, List.of(), lookout), lookout);
    } while (!telling(draft));
    return draft;
  }

  private static boolean telling(Draft draft) {
    return draft.answer() instanceof Quantity quantity
        && quantity.beliefs().size() >= ENOUGH_BELIEFS;
  }

  private static Draft draft(Task task, Scenario scenario, RangeLookout lookout) {
    boolean tonight = lookout.visibility() != null;
    double miles = tenth(tonight ? lookout.seenFrom() : lookout.geographicRange());
    double tolerance = tolerance(miles);
    return new Draft(
        Form.LIGHT,
        List.of(Concept.LIGHT_RANGE),
        scenario,
        Message.of(tonight ? "prompt.range.tonight" : "prompt.range.geographic", tolerance),
        Quantity.of(
            Unit.NAUTICAL_MILES,
            miles,
            tolerance,
            Distractors.of(task, Form.LIGHT, scenario, TypedNumber.word(miles)).numbers()),
        tonight ? tonight(lookout) : geographic(lookout));
  }

  /** As often limited by the horizon as by the air, and never nearly by both. */
  private static RangeLookout tonight(Task task) {
    boolean horizon = task.chance().oneIn(2);
    RangeLookout lookout;
    do {
      lookout = lookout(task, task.chance().pick(VISIBILITIES));
    } while (horizon != lookout.geographicRange() < lookout.luminousRange() || !apart(lookout));
    return lookout;
  }

  private static boolean apart(RangeLookout lookout) {
    double off = Math.abs(lookout.geographicRange() - lookout.luminousRange());
    return off > 2 * tolerance(lookout.seenFrom());
  }

  private static RangeLookout lookout(Task task, @Nullable Double visibility) {
    Chance chance = task.chance();
    boolean feet = task.practice().tellsFeet();
    int height = feet ? chance.between(20, 200) : chance.between(6, 60);
    String eye = chance.pick(feet ? EYES_IN_FEET : EYES_IN_METRES);
    String light =
        chance.pick(CHARACTERS)
            + (" " + height + (feet ? "ft" : "m"))
            + (" " + chance.pick(RangeLookout.NOMINAL_RANGES) + "M");
    return new RangeLookout(
        LightCharacter.parse(light), new Elevation(new BigDecimal(eye), feet), visibility);
  }

  private static Message geographic(RangeLookout lookout) {
    return Message.of(
        "rule.range.geographic",
        tenth(lookout.elevation().horizon()),
        tenth(lookout.eye().horizon()),
        tenth(lookout.geographicRange()));
  }

  private static Message tonight(RangeLookout lookout) {
    boolean horizon = lookout.geographicRange() < lookout.luminousRange();
    return Message.of(
        horizon ? "rule.range.horizon" : "rule.range.air",
        tenth(lookout.geographicRange()),
        tenth(lookout.luminousRange()));
  }

  /** Three in a hundred, in tenths of a mile and at least one of them. */
  private static double tolerance(double miles) {
    return Math.max(LEAST_TOLERANCE, Math.ceil(miles * TOLERANCE * 10) / 10);
  }

  private static double tenth(double miles) {
    return Math.round(miles * 10) / 10.0;
  }

  /** A range as an answer has it, to a tenth of a mile. */
  static @Nullable String word(@Nullable Double miles) {
    return miles == null ? null : TypedNumber.word(tenth(miles));
  }
}
