package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.waterway.ConventionalDirection;

/** How beliefs see the heading of a scenario lie to the conventional direction. */
final class DirectionBeliefs {
  private DirectionBeliefs() {}

  static @Nullable Travel generalOverLocal(Scenario scenario) {
    return travel(scenario, scenario.situation().general());
  }

  static @Nullable Travel reversed(Scenario scenario) {
    Bearing buoyage = scenario.situation().buoyage();
    return travel(scenario, buoyage == null ? null : buoyage.reciprocal());
  }

  private static @Nullable Travel travel(Scenario scenario, @Nullable Bearing direction) {
    return direction == null
        ? null
        : new ConventionalDirection(direction).travel(scenario.situation().heading()).orElse(null);
  }
}
