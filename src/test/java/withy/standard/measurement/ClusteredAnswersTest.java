package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.measurement.ClassRate;
import withy.core.measurement.Tally;
import withy.core.measurement.WilsonInterval;

/**
 * Answers of one learner hang together as pups of one litter do: Rao and Scott 1992, Biometrics
 * 48:577. A litter takes the place of a learner, a death that of an error. Rao and Scott count
 * every pup alike and we every learner, so the figures are near, not equal.
 */
class ClusteredAnswersTest {
  private static final int ENDLESS = 1_000_000_000;

  /** Of learners who are a few out of very many, the spread among them is all that is unsure. */
  @ParameterizedTest
  @ValueSource(strings = {"CTRL", "TREAT"})
  void findsTheSpreadAmongClustersAsPublished(String group) {
    List<Tally> litters = litters(group);
    ClassRate few = ClassRate.of(litters, ENDLESS);
    ClassRate all = ClassRate.of(litters, litters.size());
    double among = few.variance() - all.variance();
    double effective = few.mean() * (1 - few.mean()) / among;
    assertThat(effective / published("neff_" + group + "=n/deff")).isBetween(0.95, 1.05);
  }

  /** The doubt within each cluster comes on top, so ours is the more careful. */
  @ParameterizedTest
  @ValueSource(strings = {"CTRL", "TREAT"})
  void countsFewerAnswersThanPublishedRatherThanMore(String group) {
    ClassRate few = ClassRate.of(litters(group), ENDLESS);
    assertThat(few.effectiveAnswers())
        .isLessThan(published("neff_" + group + "=n/deff"))
        .isGreaterThan(published("neff_" + group + "=n/deff") / 2);
  }

  /** As if pups were strangers: 33 of 145, 95 %. */
  @Test
  void isTooSureOfTheTreatedWhereClustersAreLeftOut() {
    int deaths = litters("TREAT").stream().mapToInt(Tally::errors).sum();
    int pups = litters("TREAT").stream().mapToInt(Tally::answers).sum();
    WilsonInterval naive = WilsonInterval.of(deaths, pups, 0.95);
    assertThat(naive.lower()).isCloseTo(0.167, within(5e-4));
    assertThat(naive.upper()).isCloseTo(0.302, within(5e-4));
    ClassRate few = ClassRate.of(litters("TREAT"), ENDLESS);
    assertThat(few.upper() - few.lower()).isGreaterThan(naive.upper() - naive.lower());
  }

  private static List<Tally> litters(String group) {
    return Figures.of("cluster_rats.csv").stream()
        .filter(row -> row.get("group").equals(group))
        .map(row -> new Tally((int) number(row, "n"), (int) (number(row, "n") - number(row, "y"))))
        .toList();
  }

  private static double published(String quantity) {
    return Double.parseDouble(Figures.value("cluster_checks.csv", quantity, "value"));
  }
}
