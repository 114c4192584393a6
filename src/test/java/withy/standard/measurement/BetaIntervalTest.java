package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.measurement.ClassRate;
import withy.core.measurement.Tally;

/** What the intervals of class rates rest on, and how often they hold what they should. */
class BetaIntervalTest {
  /**
   * Gelman and others, Bayesian Data Analysis, chapter 5: seventy groups give the prior of the next
   * (1.4, 8.6), of which its mean and deviation follow (.223, .083).
   */
  @Test
  void drawsTheLastGroupOfRatsTowardsTheOthers() {
    List<CSVRecord> rows = Figures.of("rat_tumour.csv");
    double[] rates =
        rows.subList(0, 70).stream()
            .mapToDouble(row -> number(row, "y") / number(row, "n"))
            .toArray();
    double mean = DoubleStream.of(rates).average().orElseThrow();
    double variance = DoubleStream.of(rates).map(r -> (r - mean) * (r - mean)).sum() / 69;
    double strength = mean * (1 - mean) / variance - 1;
    assertThat(mean).isCloseTo(misc("rat tumour mean of 70 rates"), within(1e-9));
    assertThat(Math.sqrt(variance)).isCloseTo(misc("sd"), within(1e-9));
    assertThat(mean * strength)
        .isCloseTo(misc("moment alpha"), within(1e-8))
        .isCloseTo(1.3561, within(5e-5));
    assertThat((1 - mean) * strength)
        .isCloseTo(misc("moment beta"), within(1e-8))
        .isCloseTo(8.6151, within(5e-5));
    double errors = number(rows.get(70), "y");
    double others = number(rows.get(70), "n") - errors;
    BetaDistribution posterior =
        BetaDistribution.of(mean * strength + errors, (1 - mean) * strength + others);
    assertThat(posterior.getMean())
        .isCloseTo(misc("posterior mean 4/14"), within(1e-9))
        .isCloseTo(0.22344, within(5e-6));
    assertThat(Math.sqrt(posterior.getVariance()))
        .isCloseTo(misc("posterior sd"), within(1e-9))
        .isCloseTo(0.08336, within(5e-6));
  }

  private static double misc(String quantity) {
    return Double.parseDouble(Figures.value("misc_checks.csv", quantity, "computed"));
  }

  /** Brown, Cai and DasGupta 2001: Jeffreys' interval, which a class rate gives, at 95 %. */
  @ParameterizedTest
  @ValueSource(ints = {5, 10, 20, 40, 50})
  void holdsTheRateAsOftenAsPublished(int answers) {
    double[] coverage =
        IntStream.range(1, 200).mapToDouble(i -> coverage(answers, i * 0.005, 0.025)).toArray();
    assertThat(DoubleStream.of(coverage).average().orElseThrow())
        .isCloseTo(published("jeffreys_mean_cov_p.005-.995", answers), within(1e-8));
    assertThat(DoubleStream.of(coverage).min().orElseThrow())
        .isCloseTo(published("jeffreys_min_cov_p.005-.995", answers), within(1e-8));
  }

  /** The class rate itself, at its 90 %, where each learner answers once. */
  @ParameterizedTest
  @ValueSource(ints = {5, 12, 30})
  void holdsTheClassRateInNineOfTen(int learners) {
    double mean =
        IntStream.range(1, 200)
            .mapToDouble(i -> classCoverage(learners, i * 0.005))
            .average()
            .orElseThrow();
    assertThat(mean).isBetween(0.89, 0.92);
  }

  private static double published(String method, int answers) {
    return Figures.of("coverage.csv").stream()
        .filter(row -> row.get("method").equals(method))
        .filter(row -> number(row, "n") == answers)
        .mapToDouble(row -> number(row, "coverage_computed"))
        .findFirst()
        .orElseThrow();
  }

  private static double coverage(int answers, double rate, double tail) {
    BinomialDistribution errors = BinomialDistribution.of(answers, rate);
    double sum = 0;
    for (int x = 0; x <= answers; x++) {
      BetaDistribution posterior = BetaDistribution.of(x + 0.5, answers - x + 0.5);
      double lower = x == 0 ? 0 : posterior.inverseCumulativeProbability(tail);
      double upper = x == answers ? 1 : posterior.inverseSurvivalProbability(tail);
      sum += lower <= rate && rate <= upper ? errors.probability(x) : 0;
    }
    return sum;
  }

  private static double classCoverage(int learners, double rate) {
    BinomialDistribution errors = BinomialDistribution.of(learners, rate);
    double sum = 0;
    for (int x = 0; x <= learners; x++) {
      int wrong = x;
      List<Tally> tallies =
          IntStream.range(0, learners).mapToObj(i -> new Tally(1, i < wrong ? 1 : 0)).toList();
      ClassRate of = ClassRate.of(tallies, learners);
      sum += of.lower() <= rate && rate <= of.upper() ? errors.probability(x) : 0;
    }
    return sum;
  }
}
