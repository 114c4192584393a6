package withy.standard.ranges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import withy.core.light.Elevation;
import withy.core.light.Intensity;

/** Ranges of lights as published examples and tables work them out. */
class WorkedRangesTest {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();
  private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z])[0-9]+(\\.[0-9]+)?");

  @TestFactory
  Stream<DynamicTest> everyRowComesOut() {
    return rows().stream()
        .map(
            row ->
                DynamicTest.dynamicTest(row.get("id") + " " + row.get("input"), () -> check(row)));
  }

  @Test
  void theTableHasAllItsRows() {
    assertThat(rows()).hasSize(56);
  }

  private static void check(CSVRecord row) {
    double expected = Double.parseDouble(row.get("result"));
    switch (row.get("kind")) {
      case "geographic" -> geographic(row, expected);
      case "intensity for nominal range" ->
          assertThat(Intensity.ofNominalRange(numbers(row).get(0)).candela())
              .isCloseTo(expected, within(0.05 + expected * 1e-4));
      default ->
          assertThat(
                  Intensity.ofNominalRange(numbers(row).get(0)).luminousRange(numbers(row).get(1)))
              .isCloseTo(expected, within(0.05));
    }
  }

  /** The two horizons of a published example are rounded before they are added. */
  private static void geographic(CSVRecord row, double expected) {
    Elevation light = height(row, 0);
    Elevation eye = height(row, 1);
    boolean published = row.get("basis").equals("published");
    assertThat(light.geographicRange(eye)).isCloseTo(expected, within(published ? 0.1 : 0.005));
    if (published) {
      assertThat(light.horizon())
          .isCloseTo(Double.parseDouble(row.get("light_horizon_M")), within(0.05));
      assertThat(eye.horizon())
          .isCloseTo(Double.parseDouble(row.get("eye_horizon_M")), within(0.05));
    }
  }

  /** NAVEDTRA 14220 p. 4-11: the geographic range limits the first light, its power the second. */
  @Test
  void theLesserRangeDecidesInThePublishedExamples() {
    assertThat(seen(feet(90), feet(50), 20)).isCloseTo(19.4, within(0.05));
    assertThat(seen(feet(80), feet(35), 10)).isCloseTo(10.0, within(0.05));
  }

  private static double seen(Elevation light, Elevation eye, double nominal) {
    double luminous = Intensity.ofNominalRange(nominal).luminousRange(Intensity.NOMINAL_VISIBILITY);
    return Math.min(light.geographicRange(eye), luminous);
  }

  private static Elevation height(CSVRecord row, int place) {
    boolean feet = row.get("input").contains(" ft");
    return new Elevation(BigDecimal.valueOf(numbers(row).get(place)), feet);
  }

  private static Elevation feet(int feet) {
    return new Elevation(BigDecimal.valueOf(feet), true);
  }

  private static List<Double> numbers(CSVRecord row) {
    List<Double> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(row.get("input"));
    while (matcher.find()) {
      numbers.add(Double.valueOf(matcher.group()));
    }
    return numbers;
  }

  private static List<CSVRecord> rows() {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(WorkedRangesTest.class.getResourceAsStream("ranges_worked.csv")),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
