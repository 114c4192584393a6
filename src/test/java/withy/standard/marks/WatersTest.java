package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkRule;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Structure;
import withy.core.mark.Symbol;
import withy.core.mark.Travel;
import withy.core.mark.Waters;
import withy.standard.Covers;

/** Waters with rules of their own: 33 CFR 62.49 and 62.51; brooms on tidal flats. */
class WatersTest {
  @ParameterizedTest
  @CsvSource({
    "port-hand, YELLOW_TRIANGLE, WITH, LEAVE_TO_STARBOARD",
    "port-hand, YELLOW_TRIANGLE, AGAINST, LEAVE_TO_PORT",
    "starboard-hand, YELLOW_TRIANGLE, WITH, LEAVE_TO_STARBOARD",
    "dayboard-sg, YELLOW_TRIANGLE, WITH, LEAVE_TO_STARBOARD",
    "starboard-hand, YELLOW_SQUARE, WITH, LEAVE_TO_PORT",
    "starboard-hand, YELLOW_SQUARE, AGAINST, LEAVE_TO_STARBOARD",
    "dayboard-tr, YELLOW_SQUARE, WITH, LEAVE_TO_PORT",
    "dayboard-sg, YELLOW_SQUARE, WITH, LEAVE_TO_PORT"
  })
  @Covers(MarkRule.WATERWAY_SYMBOL_DECIDES)
  void goesByTheYellowSymbolWhateverTheColour(String id, Symbol symbol, Travel travel, Side side) {
    CSVRecord row = row("ICW yellow " + (symbol == Symbol.YELLOW_TRIANGLE ? "triangle" : "square"));
    assertThat(row.get("meaning_and_passing_rule"))
        .contains(symbol == Symbol.YELLOW_TRIANGLE ? "STARBOARD along" : "PORT along");
    assertThat(side(id, symbol, Waters.INTRACOASTAL, travel)).isEqualTo(side);
  }

  @ParameterizedTest
  @CsvSource({
    "port-hand, WITH, LEAVE_TO_PORT",
    "dayboard-sg, AGAINST, LEAVE_TO_STARBOARD",
    "starboard-hand, WITH, LEAVE_TO_STARBOARD",
    "dayboard-tr, AGAINST, LEAVE_TO_PORT"
  })
  @Covers(MarkRule.WATERWAY_BAND_TELLS_NO_SIDE)
  void leavesTheSideToTheColourUnderAYellowBand(String id, Travel travel, Side side) {
    assertThat(row("ICW yellow horizontal band").get("meaning_and_passing_rule"))
        .startsWith("no side meaning");
    assertThat(side(id, Symbol.YELLOW_BAND, Waters.INTRACOASTAL, travel)).isEqualTo(side);
  }

  /** Off the waterway the symbol says nothing to a boat in the channel that she follows. */
  @Test
  void goesByTheColourElsewhere() {
    assertThat(side("starboard-hand", Symbol.YELLOW_SQUARE, null, Travel.WITH))
        .isEqualTo(Side.LEAVE_TO_STARBOARD);
  }

  @ParameterizedTest
  @CsvSource({
    "Fl G 4s, LEAVE_TO_PORT",
    "Fl W 4s, LEAVE_TO_PORT",
    "Fl(2) R 5s, LEAVE_TO_STARBOARD",
    "Fl(2) W 5s, LEAVE_TO_STARBOARD"
  })
  @Covers(MarkRule.RIVER_LIGHT_RHYTHM)
  void tellsTheSideOfARiverByTheNumberOfFlashes(String light, Side upstream) {
    assertThat(row("Western Rivers: buoys").get("light"))
        .isEqualTo("green: single flash, green or WHITE; red: double flash Fl(2), red or WHITE");
    LightCharacter shown = LightCharacter.parse(light);
    assertThat(SideRules.byRiverLight(Practice.USA, shown, Travel.WITH)).contains(upstream);
    assertThat(SideRules.byRiverLight(Practice.USA, shown, Travel.AGAINST))
        .contains(upstream.opposite());
  }

  @ParameterizedTest
  @CsvSource({"Fl R 4s", "Fl(2) G 5s", "Fl(3) W 10s", "Fl Y 4s"})
  @Covers(MarkRule.RIVER_LIGHT_RHYTHM)
  void tellsNoSideByOtherLights(String light) {
    assertThat(SideRules.byRiverLight(Practice.USA, LightCharacter.parse(light), Travel.WITH))
        .isEmpty();
    assertThat(
            SideRules.byRiverLight(Practice.CANADA, LightCharacter.parse("Fl W 4s"), Travel.WITH))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "broom-port-hand, BROOM_UP, LEAVE_TO_PORT",
    "broom-starboard-hand, BROOM_DOWN, LEAVE_TO_STARBOARD"
  })
  @Covers(MarkRule.BROOM_TELLS_THE_HAND)
  void leavesTwigsUpToPortAndTwigsDownToStarboard(String id, Structure twigs, Side side) {
    MarkDescription broom = Practice.IALA_A.mark(id).orElseThrow();
    assertThat(broom.look().structures()).containsExactly(twigs);
    assertThat(broom.passing().side(Travel.WITH, null)).contains(side);
    assertThat(broom.passing().side(Travel.AGAINST, null)).contains(side.opposite());
  }

  private static Side side(
      String id, Symbol symbol, @org.jspecify.annotations.Nullable Waters waters, Travel travel) {
    MarkDescription mark = Practice.USA.mark(id).orElseThrow();
    Appearance seen = mark.look().typical().bearing(symbol);
    return SideRules.side(Practice.USA, mark.kind(), seen, waters, travel, null).orElseThrow();
  }

  private static CSVRecord row(String item) {
    return Tables.of("national_marks.csv").stream()
        .filter(each -> each.get("item").equals(item))
        .findFirst()
        .orElseThrow();
  }
}
