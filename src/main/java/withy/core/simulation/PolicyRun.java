package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.Frequencies;
import withy.core.measurement.LearnerModel;

/**
 * Drills of many planted learners by one policy. As on a server, the statistics know what earlier
 * learners were found to hold: from class to class the priors are found anew from those who have
 * drilled.
 */
final class PolicyRun {
  private static final double RECALL = 0.90;
  private static final int CLASS = 20;
  private static final int REMEMBERED = 500;

  private final Policy policy;
  private final List<Pool> pools;
  private final Population population;
  private final int length;
  private final List<Found> found = new ArrayList<>();
  private final List<List<ConceptSums>> earlier = new ArrayList<>();
  private List<LearnerModel> models;
  private long right;

  PolicyRun(Policy policy, List<Pool> pools, Population population, int length) {
    this.policy = policy;
    this.pools = pools;
    this.population = population;
    this.length = length;
    for (int i = 0; i < length; i++) {
      found.add(new Found());
    }
    pools.forEach(each -> earlier.add(new ArrayList<>()));
    this.models = models();
  }

  PolicyFigures figures(int learners, long seed) {
    for (int number = 0; number < learners; number++) {
      if (number % CLASS == 0) {
        models = models();
      }
      drill(number, Chance.of(seed, number));
    }
    List<Integer> lengths = List.of(Math.max(1, length / 3), Math.max(1, 2 * length / 3), length);
    return new PolicyFigures(
        policy,
        lengths,
        at(lengths, Found::recall),
        at(lengths, Found::flagged),
        at(lengths, Found::precision),
        at(lengths, Found::named),
        at(lengths, Found::namedSurely),
        at(lengths, Found::mastered),
        itemsToRecall(),
        right / ((double) learners * length));
  }

  private List<LearnerModel> models() {
    List<LearnerModel> found = new ArrayList<>();
    for (int place = 0; place < pools.size(); place++) {
      List<ConceptSums> all = earlier.get(place);
      found.add(
          Frequencies.of(
              pools.get(place).beliefs(),
              all.subList(Math.max(0, all.size() - REMEMBERED), all.size())));
    }
    return found;
  }

  private void drill(int number, Chance chance) {
    List<PlantedState> planted =
        pools.stream().map(each -> PlantedState.drawn(population, each, chance)).toList();
    Drilled drilled = new Drilled("learner-" + number, pools, models, planted, chance);
    for (int item = 0; item < length; item++) {
      right += drilled.next(policy, length, population.learning()) ? 1 : 0;
      for (int place = 0; place < pools.size(); place++) {
        found.get(item).add(planted.get(place), drilled.planted(place), drilled.state(place));
      }
    }
    for (int place = 0; place < pools.size(); place++) {
      ConceptSums sums = drilled.sums().concepts().get(pools.get(place).concept().id());
      if (sums != null) {
        earlier.get(place).add(sums);
      }
    }
  }

  private List<Double> at(List<Integer> lengths, ToDoubleFunction<Found> figure) {
    return lengths.stream().map(each -> figure.applyAsDouble(found.get(each - 1))).toList();
  }

  private @Nullable Integer itemsToRecall() {
    for (int item = 0; item < length; item++) {
      if (found.get(item).recall() >= RECALL) {
        return item + 1;
      }
    }
    return null;
  }
}
