package withy.core.item;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.SurveyedWater;
import withy.core.hydrography.WaterGenerator;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/**
 * What an item shall measure and where, and the chance that it is drawn from.
 *
 * @param index of the item in its row, from 0
 * @param surveyed the water in which the item lies; null where it is drawn, if there is any
 */
record Task(
    Practice practice,
    Concept concept,
    TimeOfDay time,
    int index,
    Chance chance,
    @Nullable SurveyedWater surveyed) {
  /** Far more waters than are ever drawn before one has what is looked for. */
  private static final int MOST_WATERS = 500;

  /**
   * What is looked for in stretches of water, each drawn as {@link #water} does, in the first that
   * has it.
   *
   * @throws IllegalStateException if far too many have not
   */
  <T> T found(List<Blueprint> blueprints, Function<Waterway, Optional<T>> search) {
    for (int i = 0; i < MOST_WATERS; i++) {
      Optional<T> found = search.apply(water(blueprints));
      if (found.isPresent()) {
        return found.get();
      }
    }
    throw new IllegalStateException(
        "no item about " + concept.id() + " in " + MOST_WATERS + " waters");
  }

  /**
   * A stretch of water marked as the practice marks it: the surveyed one if there is one, else one
   * of some kinds.
   */
  Waterway water(List<Blueprint> blueprints) {
    if (surveyed != null) {
      return surveyed.marked(practice, chance);
    }
    return WaterGenerator.water(practice, chance.pick(blueprints), Keel.CRUISER, chance);
  }
}
