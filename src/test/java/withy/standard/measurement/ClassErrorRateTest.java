package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.measurement.ClassRate;
import withy.core.measurement.Tally;

/** Effective sample sizes after Korn and Graubard 1998, Survey Methodology 24:193. */
class ClassErrorRateTest {
  private static final Offset<Double> TEN_DIGITS = within(1e-9);

  @ParameterizedTest
  @MethodSource("examples")
  void givesEveryLearnerOneVote(CSVRecord row) {
    ClassRate rate = rate(row);
    assertThat(rate.mean()).isEqualTo(number(row, "mean"), TEN_DIGITS);
    assertThat(rate.variance()).isEqualTo(number(row, "var"), TEN_DIGITS);
    assertThat(rate.effectiveAnswers()).isEqualTo(number(row, "n_eff"), within(1e-8));
    assertThat(rate.effectiveErrors()).isEqualTo(number(row, "x_eff"), TEN_DIGITS);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void saysHowSureTheRateIs(CSVRecord row) {
    ClassRate rate = rate(row);
    boolean nobodyErred = number(row, "mean") == 0;
    assertThat(rate.lower()).isEqualTo(nobodyErred ? 0 : number(row, "q05"), TEN_DIGITS);
    assertThat(rate.upper()).isEqualTo(number(row, "q95"), TEN_DIGITS);
    assertThat(rate.aboveTolerance()).isEqualTo(number(row, "P(e>.25)"), TEN_DIGITS);
  }

  /** Brown, Cai and DasGupta 2001: one answer a learner is the plain binomial case. */
  @ParameterizedTest
  @MethodSource("jeffreysAtNinetyPercent")
  void isJeffreysIntervalWhereEachLearnerAnswersOnce(CSVRecord row) {
    int errors = Integer.parseInt(row.get("x"));
    int answers = Integer.parseInt(row.get("n"));
    List<Tally> tallies = new ArrayList<>();
    for (int i = 0; i < answers; i++) {
      tallies.add(new Tally(1, i < errors ? 1 : 0));
    }
    ClassRate rate = ClassRate.of(tallies, answers);
    assertThat(rate.effectiveAnswers()).isEqualTo(answers, within(1e-12));
    assertThat(rate.lower()).isEqualTo(number(row, "lower"), TEN_DIGITS);
    assertThat(rate.upper()).isEqualTo(number(row, "upper"), TEN_DIGITS);
  }

  /** Gelman and others, Bayesian Data Analysis, chapter 5: the library the intervals rest on. */
  @ParameterizedTest
  @MethodSource("posteriors")
  void restsOnBetaQuantilesThatAgreeWithPublishedOnes(CSVRecord row) {
    double errors = number(row, "errors");
    BetaDistribution posterior =
        BetaDistribution.of(
            number(row, "a") + errors, number(row, "b") + number(row, "n") - errors);
    assertThat(posterior.getMean()).isEqualTo(number(row, "post_mean"), TEN_DIGITS);
    assertThat(posterior.inverseCumulativeProbability(0.05))
        .isEqualTo(number(row, "q05"), TEN_DIGITS);
    assertThat(posterior.inverseCumulativeProbability(0.95))
        .isEqualTo(number(row, "q95"), TEN_DIGITS);
    assertThat(posterior.survivalProbability(0.25))
        .isEqualTo(number(row, "P(error_rate>.25)"), TEN_DIGITS);
  }

  static Stream<CSVRecord> examples() {
    return Figures.of("class_rate_example.csv").stream();
  }

  static Stream<CSVRecord> jeffreysAtNinetyPercent() {
    return Figures.of("jeffreys.csv").stream().filter(row -> row.get("conf").equals("0.9"));
  }

  static Stream<CSVRecord> posteriors() {
    return Figures.of("beta_posterior.csv").stream();
  }

  private static ClassRate rate(CSVRecord row) {
    String[] errors = row.get("errors_per_learner").split(" ");
    String[] answers = row.get("answers_per_learner").split(" ");
    List<Tally> tallies = new ArrayList<>();
    for (int i = 0; i < errors.length; i++) {
      tallies.add(new Tally(Integer.parseInt(answers[i]), Integer.parseInt(errors[i])));
    }
    return ClassRate.of(tallies, Integer.parseInt(row.get("class_size")));
  }
}
