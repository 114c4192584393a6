package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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
 * What difficulty is worth in planted classes, concept by concept, since concepts differ in what
 * they tempt to. It tells that beliefs and guessing make the items harder that we call so; whether
 * a silhouette does, only people can tell: planted learners see as well by night.
 */
class PlantedDifficultyTest {
  private static final int ITEMS = 60;
  private static final int LEARNERS = 100;

  @Test
  void facilityFallsWithDifficultyOnTheSameConcept() {
    List<Double> falls = new ArrayList<>();
    Composition all = new Composition(List.of(), List.of(), null, 1);
    for (Concept concept : ItemGenerator.measurable(Practice.IALA_A, all)) {
      if (concept != Concept.PASSAGE) { // a passage offers no choice
        List<Double> facility = facility(Pool.of(Practice.IALA_A, concept, ITEMS, 3));
        for (int i = 1; i < facility.size(); i++) {
          falls.add(facility.get(i - 1) - facility.get(i));
        }
      }
    }
    double mean = falls.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    long falling = falls.stream().filter(each -> each > 0).count();
    String told = "%.3f on the average, %d of %d".formatted(mean, falling, falls.size());
    assertThat(mean).as(told).isGreaterThan(0.015);
    assertThat(2 * falling).as(told).isGreaterThan(falls.size());
  }

  /** Of each difficulty that the items have, the easier first. */
  private static List<Double> facility(Pool pool) {
    Map<Difficulty, List<Double>> right = new EnumMap<>(Difficulty.class);
    for (int learner = 0; learner < LEARNERS; learner++) {
      PlantedState state = PlantedState.drawn(Population.USUAL, pool, Chance.of(9, learner));
      for (Posed each : pool.items()) {
        right
            .computeIfAbsent(Difficulty.of(each.item()), none -> new ArrayList<>())
            .add(state.right(each));
      }
    }
    return right.values().stream()
        .filter(each -> each.size() >= 3 * LEARNERS) // three items or more
        .map(each -> each.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
        .toList();
  }
}
