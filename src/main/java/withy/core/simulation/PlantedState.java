package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.response.OfferedOption;

/**
 * What a planted learner holds of one concept.
 *
 * @param knows whether the learner knows it
 * @param belief what is believed instead; null where the learner knows or guesses
 * @param slip of one who knows, on each item
 * @param pull of the belief, on each item that tempts it
 */
record PlantedState(boolean knows, @Nullable String belief, double slip, double pull) {
  static PlantedState drawn(Population population, Pool pool, Chance chance) {
    double slip = Population.between(population.leastSlip(), population.mostSlip(), chance);
    double pull = Population.between(population.leastPull(), population.mostPull(), chance);
    double place = Population.share(chance);
    if (place < population.knows()) {
      return new PlantedState(true, null, slip, pull);
    }
    return new PlantedState(false, belief(population, pool, place), slip, pull);
  }

  private static @Nullable String belief(Population population, Pool pool, double place) {
    double held = place - population.knows();
    if (held >= population.first() + population.second() || pool.planted().isEmpty()) {
      return null;
    }
    boolean second = held >= population.first() && pool.planted().size() > 1;
    return pool.planted().get(second ? 1 : 0);
  }

  PlantedState learnt() {
    return new PlantedState(true, null, slip, pull);
  }

  String answer(Posed posed, Chance chance) {
    @Nullable String aim = aim(posed);
    if (aim != null && Population.share(chance) < firmness(posed, aim)) {
      return aim;
    }
    List<String> others = new ArrayList<>();
    for (OfferedOption each : posed.offered()) {
      if (!each.value().equals(aim)) {
        others.add(each.value());
      }
    }
    return chance.pick(others);
  }

  /** The chance of a right answer. */
  double right(Posed posed) {
    int options = posed.offered().size();
    @Nullable String aim = aim(posed);
    if (aim == null) {
      return 1.0 / options;
    }
    double firm = firmness(posed, aim);
    return aim.equals(posed.item().key()) ? firm : (1 - firm) / (options - 1);
  }

  private double firmness(Posed posed, String aim) {
    return aim.equals(posed.item().key()) ? 1 - slip : pull;
  }

  /** The option that the learner would give; null for any. */
  private @Nullable String aim(Posed posed) {
    if (belief == null) {
      return knows ? posed.item().key() : null;
    }
    return posed.led().getOrDefault(belief, posed.item().key());
  }
}
