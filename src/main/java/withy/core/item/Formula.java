package withy.core.item;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.light.LightCharacter;
import withy.core.mark.Demand;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Quadrant;
import withy.core.scenario.LightQuestion;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;

/**
 * A belief applied to one form of question.
 *
 * @param answer the value of the option to which the belief leads in a scenario; null where it says
 *     nothing
 */
record Formula(Form form, Function<Scenario, @Nullable String> answer) {
  /** A formula whose answer is a word of the trade as it stands. */
  static Formula of(Form form, Function<Scenario, ? extends @Nullable Term> belief) {
    return new Formula(form, scenario -> id(belief.apply(scenario)));
  }

  /** For which kind of mark a mark is taken: only for kinds that the practice has. */
  static Formula kind(Function<Scenario, @Nullable MarkKind> belief) {
    return new Formula(Form.IDENTIFY, scenario -> kind(scenario, belief.apply(scenario)));
  }

  /** What a mark is taken to ask. */
  static Formula asks(Function<Scenario, @Nullable Demand> belief) {
    return of(Form.REGULATORY, belief);
  }

  /** Of a formula of a kind: what a mark that is taken for it would ask. */
  Formula asking() {
    return new Formula(
        Form.REGULATORY,
        scenario -> {
          @Nullable String kind = answer.apply(scenario);
          return kind == null
              ? null
              : MarkingRules.mark(scenario.practice(), new MarkKind(kind)).demand().id();
        });
  }

  /** Which character a light is read as. */
  static Formula light(Function<LightCharacter, @Nullable LightCharacter> belief) {
    return new Formula(Form.LIGHT, scenario -> light(scenario, belief));
  }

  /** How far off a light is seen, in nautical miles. */
  static Formula range(Function<RangeLookout, @Nullable Double> belief) {
    return new Formula(
        Form.LIGHT,
        scenario ->
            scenario.lookout() instanceof RangeLookout lookout
                ? RangeWriter.word(belief.apply(lookout))
                : null);
  }

  /** What is seen of a light with sectors, or where a sector ends. */
  static Formula sector(BiFunction<Scenario, SectorLookout, @Nullable String> belief) {
    return new Formula(
        Form.LIGHT,
        scenario ->
            scenario.lookout() instanceof SectorLookout lookout
                ? belief.apply(scenario, lookout)
                : null);
  }

  /** Which number a mark of a channel bears. */
  static Formula number(Function<Scenario, @Nullable Integer> belief) {
    return new Formula(Form.NUMBER, scenario -> decimal(belief.apply(scenario)));
  }

  /** Which track is chosen past a danger, or how far off one is found to pass. */
  static Formula clears(Function<Scenario, @Nullable String> belief) {
    return new Formula(Form.CLEARANCE, belief);
  }

  /** Where to pass a cardinal mark. */
  static Formula pass(Function<Scenario, @Nullable Quadrant> belief) {
    return new Formula(
        Form.CARDINAL_PASS, scenario -> QuadrantBeliefs.value(belief.apply(scenario)));
  }

  /** Where to pass a mark that is taken for the cardinal mark of another quadrant. */
  static Formula passAs(Function<Scenario, @Nullable MarkKind> belief) {
    return pass(scenario -> QuadrantBeliefs.of(belief.apply(scenario)));
  }

  private static @Nullable String decimal(@Nullable Integer number) {
    return number == null ? null : Integer.toString(number);
  }

  private static @Nullable String id(@Nullable Term term) {
    return term == null ? null : term.id();
  }

  private static @Nullable String kind(Scenario scenario, @Nullable MarkKind kind) {
    return kind == null || !MarkingRules.has(scenario.practice(), kind) ? null : kind.id();
  }

  private static @Nullable String light(
      Scenario scenario, Function<LightCharacter, @Nullable LightCharacter> belief) {
    if (scenario.marks().isEmpty()) {
      return null;
    }
    @Nullable LightCharacter shown = scenario.mark().appearance().light();
    @Nullable LightCharacter read = shown == null ? null : belief.apply(shown);
    return read == null
        ? null
        : scenario.question() == LightQuestion.WHICH_LIGHT
            ? LightScene.valueOf(read, scenario)
            : LightBeliefs.value(read);
  }
}
