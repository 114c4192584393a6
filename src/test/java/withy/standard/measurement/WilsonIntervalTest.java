package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.measurement.WilsonInterval;

/** Wilson's interval against Newcombe (1998), Table I, and further cases; the file says which. */
class WilsonIntervalTest {
  static List<CSVRecord> wilson() {
    return Figures.of("intervals.csv").stream()
        .filter(row -> row.get("method").equals("wilson"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("wilson")
  void isThePublishedOne(CSVRecord row) {
    WilsonInterval interval =
        WilsonInterval.of((int) number(row, "x"), (int) number(row, "n"), number(row, "conf"));
    assertThat(interval.lower()).isCloseTo(number(row, "lower"), within(1e-8));
    assertThat(interval.upper()).isCloseTo(number(row, "upper"), within(1e-8));
    if (!row.get("published_upper").isEmpty()) {
      assertThat(interval.upper()).isCloseTo(number(row, "published_upper"), within(5.1e-5));
    }
  }

  /** The share ready of a class: 9 of 12, 95 %. */
  @Test
  void isWideForOneClass() {
    String[] limits = Figures.value("misc_checks.csv", "Wilson 95% 9/12", "computed").split(" ");
    WilsonInterval interval = WilsonInterval.of(9, 12, 0.95);
    assertThat(interval.lower()).isCloseTo(Double.parseDouble(limits[0]), within(5e-6));
    assertThat(interval.upper()).isCloseTo(Double.parseDouble(limits[1]), within(5e-6));
  }
}
