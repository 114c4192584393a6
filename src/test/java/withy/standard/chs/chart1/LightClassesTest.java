package withy.standard.chs.chart1;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.light.LightCharacter;
import withy.core.light.LightClass;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;
import withy.core.light.Rhythm;

/** CHS Chart 1, section P 10 and P 16, and the older spellings beside it. */
class LightClassesTest {

  static Stream<CSVRecord> classes() throws IOException {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    String file = "light_classes.csv";
    try (InputStreamReader reader =
        new InputStreamReader(
            Objects.requireNonNull(LightClassesTest.class.getResourceAsStream(file)),
            StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords().stream();
    }
  }

  static Stream<CSVRecord> olderSpellings() throws IOException {
    return classes().filter(row -> !row.get("older").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("classes")
  void readsEveryClass(CSVRecord row) {
    LightCharacter light = LightCharacter.parse(example(row.get("abbreviation")));
    assertThat(light.lightClass().id()).isEqualTo(row.get("id"));
    assertThat(light.timeline().fixed()).isEqualTo(light.lightClass() == LightClass.FIXED);
  }

  @ParameterizedTest
  @MethodSource("classes")
  void tellsEveryClassFromItsTimelineAgain(CSVRecord row) {
    LightCharacter light = LightCharacter.parse(example(row.get("abbreviation")));
    assertThat(Rhythm.classify(light.timeline())).contains(light.rhythm());
  }

  @ParameterizedTest
  @MethodSource("olderSpellings")
  void readsTheOlderSpellingAsTheSameClass(CSVRecord row) {
    for (String older : row.get("older").split("; ")) {
      LightCharacter light = LightCharacter.parse(example(older));
      assertThat(light).isEqualTo(LightCharacter.parse(example(row.get("abbreviation"))));
    }
  }

  @ParameterizedTest
  @MethodSource("classes")
  void takesOneAsNoGroupWhereTheDataWriteIt(CSVRecord row) {
    if (row.get("siggrp").equals("(1)")) {
      String abbreviation = row.get("abbreviation");
      assertThat(LightCharacter.parse(abbreviation + "(1) R"))
          .isEqualTo(LightCharacter.parse(abbreviation + " R"));
    }
  }

  @Test
  void everyClassIsInTheTable() throws IOException {
    List<String> ids = classes().map(row -> row.get("id")).toList();
    List<String> known = Arrays.stream(LightClass.values()).map(LightClass::id).toList();
    assertThat(known).hasSize(25).containsAll(ids);
    assertThat(known.stream().filter(id -> !ids.contains(id)))
        .as("Chart 1 shows no group of long flashes")
        .containsExactly("group-long-flashing");
  }

  /** P 16: three flashes every 15 s, 21 m, white 15 M, green 11 M, red between. */
  @Test
  void readsTheExampleOfTheChart() {
    LightCharacter light = LightCharacter.parse("Fl(3)WRG.15s21m15-11M");
    assertThat(light.lightClass()).isEqualTo(LightClass.GROUP_FLASHING);
    assertThat(light.group()).containsExactly(3);
    assertThat(light.periodMillis()).hasValue(15_000);
    assertThat(light.colours())
        .containsExactly(LightColour.WHITE, LightColour.RED, LightColour.GREEN);
    assertThat(light.sectored()).isTrue();
    assertThat(light.elevation().orElseThrow().metres()).isEqualByComparingTo("21");
    assertRange(light, LightColour.WHITE, "15", "15");
    assertRange(light, LightColour.RED, "11", "15");
    assertRange(light, LightColour.GREEN, "11", "11");
    assertThat(light.timeline().flashes()).isEqualTo(3);
  }

  /** P 10: a steady light with a brighter flash. */
  @Test
  void showsTheFlashOfAFixedAndFlashingLightBrighter() {
    LightTimeline timeline = LightCharacter.parse("FFl R 10s").timeline();
    assertThat(timeline.phases())
        .containsExactly(Phase.bright(LightColour.RED, 1000), Phase.light(LightColour.RED, 9000));
  }

  private static void assertRange(
      LightCharacter light, LightColour colour, String least, String most) {
    assertThat(light.rangeOf(colour).orElseThrow().least()).isEqualByComparingTo(least);
    assertThat(light.rangeOf(colour).orElseThrow().most()).isEqualByComparingTo(most);
  }

  /** An abbreviation of the table with numbers, letters and colours put in. */
  private static String example(String abbreviation) {
    String filled =
        abbreviation.replace("(n+m)", "(2+1)").replace("(n)", "(3)").replace("(x)", "(A)");
    return filled + (abbreviation.startsWith("Al") ? " WR" : " W");
  }
}
