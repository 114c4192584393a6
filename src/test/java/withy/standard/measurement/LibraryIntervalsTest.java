package withy.standard.measurement;

import static org.apache.commons.statistics.interval.BinomialConfidenceInterval.AGRESTI_COULL;
import static org.apache.commons.statistics.interval.BinomialConfidenceInterval.CLOPPER_PEARSON;
import static org.apache.commons.statistics.interval.BinomialConfidenceInterval.JEFFREYS;
import static org.apache.commons.statistics.interval.BinomialConfidenceInterval.NORMAL_APPROXIMATION;
import static org.apache.commons.statistics.interval.BinomialConfidenceInterval.WILSON_SCORE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every interval of the library that {@link withy.core.measurement.WilsonInterval} rests on,
 * against Newcombe 1998 and Brown, Cai and DasGupta 2001; the files say where. The library has
 * neither continuity corrections nor the likelihood and mid-P intervals.
 */
class LibraryIntervalsTest {
  private static final Map<String, BinomialConfidenceInterval> METHODS =
      new TreeMap<>(
          Map.of(
              "wald", NORMAL_APPROXIMATION,
              "wilson", WILSON_SCORE,
              "jeffreys", JEFFREYS,
              "agresti_coull", AGRESTI_COULL,
              "clopper_pearson", CLOPPER_PEARSON));

  static List<CSVRecord> intervals() {
    return Figures.of("intervals.csv").stream()
        .filter(row -> METHODS.containsKey(row.get("method")))
        .toList();
  }

  /** The library clips what would leave 0 to 1. */
  @ParameterizedTest
  @MethodSource("intervals")
  void areThePublishedOnes(CSVRecord row) {
    Interval interval =
        method(row.get("method"))
            .fromErrorRate((int) number(row, "n"), (int) number(row, "x"), 1 - number(row, "conf"));
    assertThat(interval.getLowerBound()).isCloseTo(clipped(number(row, "lower")), within(1e-8));
    assertThat(interval.getUpperBound()).isCloseTo(clipped(number(row, "upper")), within(1e-8));
  }

  static List<CSVRecord> coverages() {
    return Figures.of("coverage.csv");
  }

  /** At one rate, or the mean or the least of all from .005 to .995. */
  @ParameterizedTest
  @MethodSource("coverages")
  void holdTheRateAsOftenAsPublished(CSVRecord row) {
    String[] named = row.get("method").split("_(?=mean|min)");
    Cover cover = Cover.of(method(named[0]), (int) number(row, "n"));
    double found =
        named.length == 1
            ? cover.at(number(row, "p"))
            : named[1].startsWith("mean")
                ? rates().map(cover::at).average().orElseThrow()
                : rates().map(cover::at).min().orElseThrow();
    assertThat(found).isCloseTo(number(row, "coverage_computed"), within(1e-8));
    if (!row.get("BCD2001_published").isEmpty()) {
      assertThat(found).isCloseTo(number(row, "BCD2001_published"), within(5.1e-4));
    }
  }

  /** The intervals of all results that as many answers can have. */
  private record Cover(int answers, List<Interval> intervals) {
    static Cover of(BinomialConfidenceInterval method, int answers) {
      return new Cover(
          answers,
          IntStream.rangeClosed(0, answers)
              .mapToObj(x -> method.fromErrorRate(answers, x, 0.05))
              .toList());
    }

    double at(double rate) {
      BinomialDistribution errors = BinomialDistribution.of(answers, rate);
      return IntStream.rangeClosed(0, answers)
          .filter(x -> intervals.get(x).getLowerBound() <= rate)
          .filter(x -> rate <= intervals.get(x).getUpperBound())
          .mapToDouble(errors::probability)
          .sum();
    }
  }

  private static DoubleStream rates() {
    return IntStream.range(1, 200).mapToDouble(i -> i * 0.005);
  }

  private static BinomialConfidenceInterval method(String name) {
    BinomialConfidenceInterval found = METHODS.get(name);
    if (found == null) {
      throw new IllegalArgumentException(name);
    }
    return found;
  }

  private static double clipped(double bound) {
    return Math.max(0, Math.min(1, bound));
  }
}
