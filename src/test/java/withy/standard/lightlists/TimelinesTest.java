package withy.standard.lightlists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.Rhythm;

/** Rhythms in use: the defaults give every one of them from the character alone. */
class TimelinesTest {

  static Stream<CSVRecord> rows() {
    return Rows.of("timelines.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void followsFromTheCharacterAlone(CSVRecord row) {
    LightTimeline timeline = read(row).timeline();
    assertThat(timeline.sameRhythmAs(expected(row))).as(timeline.toString()).isTrue();
    assertThat(timeline.flashes()).isEqualTo(Integer.parseInt(row.get("flashes")));
    assertThat(timeline.periodMillis().orElseThrow())
        .isEqualTo((int) Math.round(Double.parseDouble(row.get("period")) * 1000));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void staysTheSameWhenItsTimesAreStated(CSVRecord row) {
    LightCharacter stated = LightCharacter.parse(text(row) + " " + row.get("sequence"));
    assertThat(stated.timeline().sameRhythmAs(expected(row))).isTrue();
    assertThat(stated.timeline().assumed()).isFalse();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isToldFromItsTimelineAgain(CSVRecord row) {
    assertThat(Rhythm.classify(expected(row))).contains(read(row).rhythm());
  }

  @Test
  void oneThatIsAMillisecondOffIsAnotherRhythm() {
    LightTimeline longer = Rows.timeline("0.301+(0.7)", List.of(LightColour.WHITE));
    assertThat(LightCharacter.parse("Q W").timeline().sameRhythmAs(longer)).isFalse();
  }

  private static LightCharacter read(CSVRecord row) {
    return LightCharacter.parse(text(row));
  }

  private static String text(CSVRecord row) {
    String character = row.get("character");
    boolean coloured = Stream.of("BuY", "WRG").anyMatch(character::contains);
    return coloured ? character : character + " " + row.get("colour");
  }

  private static LightTimeline expected(CSVRecord row) {
    String colours = row.get("colour");
    List<LightColour> turns =
        colours.equals("BuY")
            ? List.of(LightColour.BLUE, LightColour.YELLOW)
            : Arrays.stream(LightColour.values())
                .filter(colour -> colours.startsWith(colour.abbreviation()))
                .toList();
    return Rows.timeline(row.get("sequence"), turns);
  }
}
