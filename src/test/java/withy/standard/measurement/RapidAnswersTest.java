package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import withy.core.measurement.RapidAnswers;

/** Rapid answers: Wise and Kong (2005), Wise and Ma (2012); times and thresholds in the file. */
class RapidAnswersTest {
  private static final List<CSVRecord> ROWS = Figures.of("rt.csv");

  private static String value(String quantity) {
    return ROWS.stream()
        .filter(row -> row.get("quantity").equals(quantity))
        .findFirst()
        .orElseThrow()
        .get("value");
  }

  private static double[] millis() {
    return Arrays.stream(value("times").split(" "))
        .mapToDouble(each -> 1000 * Double.parseDouble(each))
        .toArray();
  }

  @Test
  void isATenthOfTheMeanTimeUnlessThatIsLessThanASecond() {
    double mean = Arrays.stream(millis()).average().orElseThrow();
    assertThat(mean).isCloseTo(1000 * Double.parseDouble(value("mean")), within(1e-6));
    assertThat(mean / 10).isCloseTo(1000 * Double.parseDouble(value("NT10")), within(1e-6));
    assertThat(RapidAnswers.isRapid(999, mean)).isTrue();
    assertThat(RapidAnswers.isRapid(1000, mean)).isFalse();
    assertThat(RapidAnswers.isRapid(1999, 20_000.0)).isTrue();
    assertThat(RapidAnswers.isRapid(2000, 20_000.0)).isFalse();
    assertThat(RapidAnswers.isRapid(9_999, 500_000.0)).isTrue();
    assertThat(RapidAnswers.isRapid(10_000, 500_000.0)).isFalse();
    assertThat(RapidAnswers.isRapid(1000, null)).isFalse();
  }

  /** One of the ten times of the file is below a second: effort .9. */
  @Test
  void leavesTheShareThatIsNotRapid() {
    double mean = Arrays.stream(millis()).average().orElseThrow();
    long slow =
        Arrays.stream(millis()).filter(each -> !RapidAnswers.isRapid((long) each, mean)).count();
    assertThat(slow / 10.0).isCloseTo(RapidAnswers.EFFORT, within(1e-12));
  }

  /** At a threshold of two seconds, which a mean time of twenty gives. */
  @Test
  void leavesEightOfTheTenWhereTwoSecondsAreNeeded() {
    long slow =
        Arrays.stream(millis()).filter(e -> !RapidAnswers.isRapid((long) e, 20_000.0)).count();
    assertThat(slow / 10.0).isCloseTo(Double.parseDouble(value("RTE_threshold_2s")), within(1e-12));
  }
}
