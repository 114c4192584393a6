package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.measurement.Frequencies;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.SequentialTest;

/** The test of readiness fed by a blueprint's items and, as a warning, by an adaptive drill. */
final class ReadinessRun {
  private static final double SLIP = 0.05;
  private static final double PULL = 0.75;

  private final List<Pool> pools;

  ReadinessRun(List<Pool> pools) {
    this.pools = pools;
  }

  ReadinessFigures figures(int learners, long seed) {
    double share = 0;
    int blueprint = 0;
    int adaptive = 0;
    for (int number = 0; number < learners; number++) {
      List<PlantedState> planted = planted(number % pools.size());
      share += right(planted);
      blueprint += isReady(planted, Policy.RANDOM, Chance.of(seed, number)) ? 1 : 0;
      adaptive += isReady(planted, Policy.LEAST_SETTLED, Chance.of(seed, number)) ? 1 : 0;
    }
    SequentialTest test = SequentialTest.USUAL;
    return new ReadinessFigures(
        test.outcome(test.notReady()),
        test.outcome(test.ready()),
        test.outcome(share / learners),
        (double) blueprint / learners,
        (double) adaptive / learners);
  }

  /** Knows every concept but two neighbours of the list. */
  private List<PlantedState> planted(int weak) {
    List<PlantedState> planted = new ArrayList<>();
    for (int place = 0; place < pools.size(); place++) {
      boolean knows = place != weak && place != (weak + 1) % pools.size();
      @Nullable String belief = knows ? null : pools.get(place).planted().get(0);
      planted.add(new PlantedState(knows, belief, SLIP, PULL));
    }
    return planted;
  }

  private double right(List<PlantedState> planted) {
    double sum = 0;
    for (int place = 0; place < pools.size(); place++) {
      PlantedState state = planted.get(place);
      sum += pools.get(place).items().stream().mapToDouble(state::right).average().orElse(0);
    }
    return sum / pools.size();
  }

  private boolean isReady(List<PlantedState> planted, Policy policy, Chance chance) {
    List<LearnerModel> models =
        pools.stream().map(each -> Frequencies.of(each.beliefs(), List.of())).toList();
    Drilled drilled = new Drilled("learner", pools, models, planted, chance);
    SequentialTest test = SequentialTest.USUAL;
    List<Boolean> answers = new ArrayList<>();
    while (test.stand(answers) == SequentialTest.Stand.GO_ON) {
      answers.add(drilled.next(policy, test.most(), 0));
    }
    return test.stand(answers) == SequentialTest.Stand.READY;
  }
}
