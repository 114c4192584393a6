package withy.standard.lightlists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightNotationException;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.LightTimeline;
import withy.core.light.Rhythm;

/** Lights from NOAA ENC data, NGA lists of lights and IHO S-12, row by row. */
class EntriesTest {

  static Stream<CSVRecord> all() {
    return Rows.of("entries.csv");
  }

  static Stream<CSVRecord> timed() {
    return all().filter(EntriesTest::consistent).filter(row -> !row.get("sequence").isEmpty());
  }

  static Stream<CSVRecord> untimed() {
    return all().filter(row -> row.get("sequence").isEmpty());
  }

  private static boolean consistent(CSVRecord row) {
    return row.get("consistent").equals("yes");
  }

  @ParameterizedTest
  @MethodSource("all")
  void readsRhythmColoursAndPeriodOfEveryEntry(CSVRecord row) {
    LightCharacter light = LightCharacter.parse(row.get("text"));
    assertThat(light.rhythm().notation()).isEqualTo(row.get("rhythm"));
    assertThat(abbreviations(light)).isEqualTo(row.get("colours"));
    if (row.get("text").matches(".*\\d ?s\\b.*")) {
      assertThat(light.periodMillis().orElseThrow()).isEqualTo(millis(row.get("period")));
    } else {
      assertThat(light.periodMillis()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void readsElevationAndRangeWhereTheEntryWritesThem(CSVRecord row) {
    LightCharacter light = LightCharacter.parse(row.get("text"));
    if (row.get("text").contains(row.get("height") + "m") && !row.get("height").isEmpty()) {
      assertThat(light.elevation().orElseThrow().metres()).isEqualByComparingTo(row.get("height"));
    } else {
      assertThat(light.elevation()).isEmpty();
    }
    if (row.get("text").contains(row.get("range") + "M") && !row.get("range").isEmpty()) {
      assertThat(light.rangeOf(light.colour()).orElseThrow().most())
          .isEqualByComparingTo(row.get("range"));
    } else {
      assertThat(light.ranges()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("timed")
  void keepsStatedTimingsInDataAndInListsOfLights(CSVRecord row) {
    String sequence = row.get("sequence");
    boolean worded = row.get("text").contains("ec.");
    for (String times : List.of(sequence, worded ? "" : Rows.worded(sequence))) {
      LightCharacter light = LightCharacter.parse(row.get("text") + " " + times);
      LightTimeline published = Rows.timeline(sequence, List.of(light.colour()));
      assertThat(light.timeline().sameRhythmAs(published)).isTrue();
      assertThat(light.timeline().assumed()).isFalse();
    }
  }

  @ParameterizedTest
  @MethodSource("timed")
  void classifiesThePublishedTimesAsStated(CSVRecord row) {
    LightTimeline published = Rows.timeline(row.get("sequence"), List.of(LightColour.WHITE));
    assertThat(Rhythm.classify(published).map(Rhythm::notation)).contains(row.get("rhythm"));
  }

  @ParameterizedTest
  @MethodSource("untimed")
  void assumesTheLengthsThatAnEntryLeavesOpen(CSVRecord row) {
    LightTimeline timeline = LightCharacter.parse(row.get("text")).timeline();
    assertThat(timeline.assumed()).isEqualTo(!timeline.fixed());
  }

  @Test
  void refusesTheDefectiveEntriesWithTheirTimes() {
    List<Reason> reasons =
        all().filter(row -> !consistent(row)).map(EntriesTest::reasonOf).toList();
    assertThat(reasons).containsExactly(Reason.LIGHT_NOT_EQUAL_TO_DARK, Reason.TIMINGS_NOT_GROUP);
  }

  /** NGA Pub. 111 K 4087 as printed: the times of two lights run together. */
  @Test
  void refusesTimesThatAddUpToMoreThanThePeriod() {
    assertThatExceptionOfType(LightNotationException.class)
        .isThrownBy(() -> LightCharacter.parse("Oc W 10s fl. 7.0s, ec. 3.0s, fl. 3.0s, ec. 3.0s"))
        .satisfies(fault -> assertThat(fault.reason()).isEqualTo(Reason.TIMINGS_NOT_PERIOD))
        .satisfies(fault -> assertThat(fault.arguments()).containsExactly("16", "10"));
  }

  private static Reason reasonOf(CSVRecord row) {
    try {
      throw new AssertionError(
          "read: " + LightCharacter.parse(row.get("text") + " " + row.get("sequence")));
    } catch (LightNotationException refused) {
      return refused.reason();
    }
  }

  private static int millis(String seconds) {
    return (int) Math.round(Double.parseDouble(seconds) * 1000);
  }

  private static String abbreviations(LightCharacter light) {
    return light.colours().stream().map(LightColour::abbreviation).collect(Collectors.joining());
  }
}
