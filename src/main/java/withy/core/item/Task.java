package withy.core.item;

import java.util.List;
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
