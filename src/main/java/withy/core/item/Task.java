package withy.core.item;

import java.util.List;
import withy.core.mark.Practice;
import withy.core.scenario.Blueprint;
import withy.core.scenario.Chance;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.WaterGenerator;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/**
 * What an item shall measure and where, and the chance that it is drawn from.
 *
 * @param index of the item in its row, from 0
 */
record Task(Practice practice, Concept concept, TimeOfDay time, int index, Chance chance) {
  /** A stretch of water of one of some kinds, marked as the practice marks it. */
  Waterway water(List<Blueprint> blueprints) {
    return WaterGenerator.water(practice, chance.pick(blueprints), Keel.CRUISER, chance);
  }
}
