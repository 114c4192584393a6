package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.BetaDistribution;
import withy.core.Chance;
import withy.core.measurement.ClassRate;
import withy.core.measurement.Tally;

/**
 * Classes of which those who struggle with a concept are given three times the items on it, as a
 * drill does that follows what is not settled. All answers thrown together then say more of the
 * strugglers than of the class; one learner, one vote does not.
 */
final class ClassRun {
  /** Of a sound concept at least so many know it, of a weak one at most so many. */
  private static final double SOUND_KNOWING = 0.85;

  private static final double WEAK_KNOWING = 0.65;
  private static final double LEAST_KNOWING = 0.20;
  private static final int FEWEST = 2;
  private static final int MOST = 5;
  private static final int MORE_FOR_STRUGGLERS = 3;
  private static final double TOLERANCE = 0.25;
  private static final double WEAK_FROM = 0.90;
  private static final double TAIL = 0.05;

  private final List<Pool> pools;
  private final Population population;
  private final int size;
  private final ClassCount rule = new ClassCount();
  private final ClassCount pooled = new ClassCount();

  ClassRun(List<Pool> pools, Population population, int size) {
    this.pools = pools;
    this.population = population;
    this.size = size;
  }

  void run(int classes, long seed) {
    for (int number = 0; number < classes; number++) {
      Chance chance = Chance.of(seed, number);
      pools.forEach(each -> concept(each, chance));
      rule.endOfClass();
      pooled.endOfClass();
    }
  }

  ClassFigures rule() {
    return rule.figures();
  }

  ClassFigures pooled() {
    return pooled.figures();
  }

  private void concept(Pool pool, Chance chance) {
    double knowing =
        chance.oneIn(2)
            ? Population.between(SOUND_KNOWING, 1, chance)
            : Population.between(LEAST_KNOWING, WEAK_KNOWING, chance);
    Population mixed = population.knowing(knowing);
    List<Tally> tallies = new ArrayList<>();
    double error = 0;
    for (int learner = 0; learner < size; learner++) {
      PlantedState state = PlantedState.drawn(mixed, pool, chance);
      error += 1 - pool.items().stream().mapToDouble(state::right).average().orElse(1);
      tallies.add(tally(state, pool, chance));
    }
    count(error / size, tallies);
  }

  private static Tally tally(PlantedState state, Pool pool, Chance chance) {
    int answers = chance.between(FEWEST, MOST) * (state.knows() ? 1 : MORE_FOR_STRUGGLERS);
    int errors = 0;
    for (int i = 0; i < answers; i++) {
      Posed posed = pool.any(chance);
      errors += state.answer(posed, chance).equals(posed.item().key()) ? 0 : 1;
    }
    return new Tally(answers, errors);
  }

  private void count(double error, List<Tally> tallies) {
    ClassRate rate = ClassRate.of(tallies, size);
    rule.add(error, rate.aboveTolerance() >= WEAK_FROM, rate.lower(), rate.upper());
    int answers = tallies.stream().mapToInt(Tally::answers).sum();
    int errors = tallies.stream().mapToInt(Tally::errors).sum();
    BetaDistribution all = BetaDistribution.of(errors + 0.5, answers - errors + 0.5);
    pooled.add(
        error,
        all.survivalProbability(TOLERANCE) >= WEAK_FROM,
        all.inverseCumulativeProbability(TAIL),
        all.inverseCumulativeProbability(1 - TAIL));
  }
}
