package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import withy.core.Chance;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/**
 * What difficulty is worth in planted classes. It tells that beliefs and guessing make the items
 * harder that we call so; whether a silhouette does, only people can tell, and planted learners see
 * as well by night.
 */
class PlantedDifficultyTest {
  private static final int ITEMS = 40;
  private static final int LEARNERS = 60;

  @Test
  void facilityFallsWithDifficulty() {
    Map<Difficulty, Double> right = new EnumMap<>(Difficulty.class);
    Map<Difficulty, Integer> put = new EnumMap<>(Difficulty.class);
    Composition all = new Composition(List.of(), List.of(), null, 1);
    for (Concept concept : ItemGenerator.measurable(Practice.IALA_A, all)) {
      if (concept == Concept.PASSAGE) {
        continue; // a passage offers no choice
      }
      Pool pool = Pool.of(Practice.IALA_A, concept, ITEMS, 3);
      for (int learner = 0; learner < LEARNERS; learner++) {
        PlantedState state = PlantedState.drawn(Population.USUAL, pool, Chance.of(9, learner));
        for (Posed each : pool.items()) {
          Difficulty difficulty = Difficulty.of(each.item());
          right.merge(difficulty, state.right(each), Double::sum);
          put.merge(difficulty, 1, Integer::sum);
        }
      }
    }
    double easier = right.get(Difficulty.EASIER) / put.get(Difficulty.EASIER);
    double middle = right.get(Difficulty.MIDDLE) / put.get(Difficulty.MIDDLE);
    double harder = right.get(Difficulty.HARDER) / put.get(Difficulty.HARDER);
    assertThat(middle).as("easier %.3f middle %.3f harder %.3f", easier, middle, harder).isLessThan(easier);
    assertThat(harder).as("easier %.3f middle %.3f harder %.3f", easier, middle, harder).isLessThan(middle);
  }
}
