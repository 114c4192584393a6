package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.MarkKind;
import withy.core.mark.Quadrant;
import withy.core.scenario.Scenario;

/** In which quadrant beliefs pass the cardinal mark of a scenario. */
final class QuadrantBeliefs {
  private QuadrantBeliefs() {}

  static Quadrant dangerNamed(Scenario scenario) {
    return scenario.mark().kind().quadrant().opposite();
  }

  /** Leaving a mark to port puts the boat on its right, as seen along her heading. */
  static Quadrant cardinalAsLateral(Scenario scenario) {
    return Quadrant.of(scenario.situation().heading().plus(90));
  }

  static @Nullable Quadrant of(@Nullable MarkKind taken) {
    return taken == null || !taken.isCardinal() ? null : taken.quadrant();
  }

  /** The value of the option, {@code pass-north}. */
  static @Nullable String value(@Nullable Quadrant quadrant) {
    return quadrant == null ? null : "pass-" + quadrant.id();
  }
}
