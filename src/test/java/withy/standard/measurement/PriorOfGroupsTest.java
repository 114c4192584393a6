package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;

/**
 * Eighteen batters, of whom the others tell what to expect of each: Efron and Morris 1975 and 1977;
 * the file says where. Of few groups the prior is hardly known (by three methods its strength comes
 * out at 168, 368 and 793), which is why ours never is: {@code Frequencies} counts as ten learners,
 * a class rate draws its learners towards it by one answer.
 */
class PriorOfGroupsTest {
  private static final List<CSVRecord> BATTERS = Figures.of("efron_morris.csv");
  private static final int AT_BATS = 45;

  @Test
  void drawsEachTowardsTheOthersByTheMomentsOfAll() {
    double mean = mean();
    double strength = strength();
    assertThat(mean).isCloseTo(misc("Efron-Morris 1977 grand mean"), within(1e-9));
    assertThat(strength).isCloseTo(368, within(0.5));
    for (CSVRecord each : BATTERS) {
      assertThat(posterior(each, mean, strength).getMean())
          .isCloseTo(number(each, "eb_betabin_moment"), within(1e-8));
    }
  }

  @Test
  void comesNearerToTheRestOfTheSeason() {
    double raw = 0;
    double drawn = 0;
    for (CSVRecord each : BATTERS) {
      double rest = number(each, "rest_of_season_avg");
      raw += square(number(each, "avg45") - rest);
      drawn += square(posterior(each, mean(), strength()).getMean() - rest);
    }
    assertThat(raw).isCloseTo(misc("SSE raw"), within(1e-9));
    assertThat(drawn).isLessThan(raw / 3);
  }

  private static BetaDistribution posterior(CSVRecord batter, double mean, double strength) {
    double hits = number(batter, "hits");
    return BetaDistribution.of(mean * strength + hits, (1 - mean) * strength + AT_BATS - hits);
  }

  private static double mean() {
    return BATTERS.stream().mapToDouble(each -> number(each, "avg45")).average().orElseThrow();
  }

  /** Of the prior, as many at-bats: what the variance has beyond that of chance. */
  private static double strength() {
    double mean = mean();
    double squares = BATTERS.stream().mapToDouble(e -> square(number(e, "avg45") - mean)).sum();
    double chance = mean * (1 - mean) / AT_BATS;
    double among = (squares / (BATTERS.size() - 1) - chance) / (1 - 1.0 / AT_BATS);
    return mean * (1 - mean) / among - 1;
  }

  private static double square(double value) {
    return value * value;
  }

  private static double misc(String quantity) {
    return Double.parseDouble(Figures.value("misc_checks.csv", quantity, "computed"));
  }
}
