package withy.core.item;

import java.util.List;
import withy.core.Term;
import withy.core.mark.MarkKind;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.scenario.Scenario;

/** Options about the way past a mark, with what becomes of the boat where there is water. */
final class SailedOptions {
  /** Ways that keep clear of the mark or its side altogether: no track is wrong in itself. */
  static final List<String> NOT_SAILED = List.of(Side.KEEP_CLEAR.id(), Side.EITHER_SIDE.id());

  private SailedOptions() {}

  static Option sailed(Option option, Scenario scenario) {
    return scenario.sailing() == null ? option : option.sailing(way(scenario, option.value()));
  }

  static List<Option> sailed(List<Option> options, Scenario scenario) {
    return options.stream().map(each -> sailed(each, scenario)).toList();
  }

  private static Way way(Scenario scenario, String value) {
    MarkKind kind = scenario.mark().kind();
    if (value.startsWith("pass-")) {
      return CardinalWaters.way(scenario, Term.parse(Quadrant.class, value.substring(5)));
    }
    Side side = Term.parse(Side.class, value);
    if (kind.isCardinal()) {
      return CardinalWaters.way(scenario, side);
    }
    return kind.isPreferredChannel()
        ? JunctionWaters.way(scenario, side)
        : WaterSides.way(scenario, side);
  }

  /** Where there is water, only answers that can be sailed are offered. */
  static Distractors sailable(Distractors distractors, Scenario scenario) {
    return scenario.sailing() == null ? distractors : distractors.without(NOT_SAILED);
  }
}
