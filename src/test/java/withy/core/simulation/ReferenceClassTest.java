package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.Chance;
import withy.core.measurement.ClassRate;
import withy.core.measurement.Tally;
import withy.standard.measurement.Figures;

/**
 * The class rate beside figures that another program computed (the project's reference, 2.3): how
 * often its interval holds the error of the class, how wide it is, how often it calls a sound
 * concept weak. How classes were planted there is not told in full, so ours are those of {@code
 * ClassRun}, and what depends on them may differ in the second digit.
 */
class ReferenceClassTest {
  private static final int CLASSES = 220;
  private static final int CONCEPTS = 8;

  private final ClassCount rule = new ClassCount();
  private final ClassCount pooled = new ClassCount();
  private double width;
  private int counted;

  /** Learners, their answers, how many times that strugglers answer, and the share who answer. */
  @ParameterizedTest
  @CsvSource({
    "'12 learners 2-5 answers, balanced',12,2,5,1,1",
    "'12 learners 2-5, strugglers x3',12,2,5,3,1",
    "'6 learners 2-4, x3',6,2,4,3,1",
    "'20 learners 2-4, x3',20,2,4,3,1",
    "'30 learners 1-2, x3',30,1,2,3,1",
    "'12 learners half answered, x3',12,2,5,3,0.5"
  })
  void isAsSureAsTheReferenceFindsIt(
      String scenario, int learners, int fewest, int most, int more, double share) {
    for (int number = 0; number < CLASSES; number++) {
      Chance chance = Chance.of(11, number);
      for (int concept = 0; concept < CONCEPTS; concept++) {
        concept(new Drill(learners, fewest, most, more, share), chance);
      }
      rule.endOfClass();
      pooled.endOfClass();
    }
    CSVRecord own = row(scenario, "E");
    assertThat(rule.figures().coverage())
        .isCloseTo(number(own, "coverage_of_90pct_interval"), within(0.03));
    assertThat(width / counted).isCloseTo(number(own, "mean_width"), within(0.025));
    assertThat(rule.figures().recall()).isGreaterThan(number(own, "recall_true>.30") - 0.02);
    assertThat(rule.figures().falseAlarms())
        .isCloseTo(number(own, "false_alarm_per_concept_true<.22"), within(0.015));
    CSVRecord together = row(scenario, "naive_pooled");
    assertThat(pooled.figures().coverage())
        .isCloseTo(number(together, "coverage_of_90pct_interval"), within(0.08));
    assertThat(pooled.figures().falseAlarms())
        .isCloseTo(number(together, "false_alarm_per_concept_true<.22"), within(0.08));
  }

  private record Drill(int learners, int fewest, int most, int more, double share) {}

  private static CSVRecord row(String scenario, String estimator) {
    return Figures.of("sim_class_ruleE.csv").stream()
        .filter(row -> row.get("scenario").equals(scenario))
        .filter(row -> row.get("estimator").equals(estimator))
        .filter(row -> number(row, "flag_if_P(e>.25)_ge") == 0.90)
        .findFirst()
        .orElseThrow();
  }

  private void concept(Drill drill, Chance chance) {
    double knowing =
        chance.oneIn(2)
            ? Population.between(0.85, 1, chance)
            : Population.between(0.20, 0.65, chance);
    List<Tally> tallies = new ArrayList<>();
    double error = 0;
    for (int learner = 0; learner < drill.learners(); learner++) {
      boolean knows = Population.share(chance) < knowing;
      double own = knows ? Population.between(0.04, 0.16, chance) : misled(chance);
      error += own / drill.learners();
      if (Population.share(chance) < drill.share()) {
        int answers = chance.between(drill.fewest(), drill.most()) * (knows ? 1 : drill.more());
        tallies.add(new Tally(answers, errors(answers, own, chance)));
      }
    }
    if (!tallies.isEmpty()) {
      count(error, drill.learners(), tallies);
    }
  }

  /** Two of three hold a belief, and miss the key but for a third of what its pull leaves. */
  private static double misled(Chance chance) {
    return Population.share(chance) < 2.0 / 3
        ? 1 - (1 - Population.between(0.60, 0.90, chance)) / 3
        : 0.75;
  }

  private static int errors(int answers, double error, Chance chance) {
    int errors = 0;
    for (int i = 0; i < answers; i++) {
      errors += Population.share(chance) < error ? 1 : 0;
    }
    return errors;
  }

  private void count(double error, int size, List<Tally> tallies) {
    ClassRate rate = ClassRate.of(tallies, size);
    rule.add(error, rate.aboveTolerance() >= 0.90, rate.lower(), rate.upper());
    width += rate.upper() - rate.lower();
    counted++;
    double answers = tallies.stream().mapToInt(Tally::answers).sum();
    double errors = tallies.stream().mapToInt(Tally::errors).sum();
    BetaDistribution all = BetaDistribution.of(errors + 0.5, answers - errors + 0.5);
    pooled.add(
        error,
        all.survivalProbability(ClassRate.TOLERANCE) >= 0.90,
        all.inverseCumulativeProbability(0.05),
        all.inverseCumulativeProbability(0.95));
  }
}
