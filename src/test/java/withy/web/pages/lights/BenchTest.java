package withy.web.pages.lights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import withy.core.light.LightCharacter;
import withy.core.light.LightClass;
import withy.core.light.LightTimeline;
import withy.drawing.FlashSafety;
import withy.wording.LightWords;
import withy.wording.Wording;

class BenchTest {
  private static final double FOUR_TIMES = 4;
  private static final LightWords WORDS = new LightWords(Wording.of(Locale.ENGLISH));

  @Test
  void showsEachClassOnceInTheOrderOfTheStandard() {
    assertThat(Examples.ALL)
        .extracting(LightCharacter::lightClass)
        .containsExactly(LightClass.values());
  }

  @Test
  void twoLightsAtAnyPaceFlashNoMoreThanIsSafe() {
    for (LightCharacter first : Examples.ALL) {
      for (LightCharacter second : Examples.ALL) {
        for (Pace pace : Pace.values()) {
          List<LightTimeline> lights =
              List.of(pace.of(first.timeline()), pace.of(second.timeline()));
          assertThat(FlashSafety.safe(lights, FOUR_TIMES)).as(first + " " + second).isTrue();
        }
      }
    }
  }

  @Test
  void slowerPacesDrawOutEveryPhase() {
    LightTimeline pair = LightCharacter.parse("Fl(2) W 10s").timeline();
    assertThat(Pace.HALF.of(pair).periodMillis()).hasValue(20_000);
    assertThat(Pace.QUARTER.of(pair).periodMillis()).hasValue(40_000);
    assertThat(Pace.QUARTER.of(pair).flashes()).isEqualTo(2);
    assertThat(Pace.STILL.of(pair)).isEqualTo(pair);
    assertThat(Pace.read("no such")).isEqualTo(Pace.TRUE);
  }

  @Test
  void wordsEveryClassAndColour() {
    for (LightClass each : LightClass.values()) {
      assertThat(WORDS.name(each)).isNotBlank();
      assertThat(WORDS.definition(each)).endsWith(".");
    }
  }

  @Test
  void tellsPhasesOneAfterTheOtherAndAlikeOnesOnce() {
    assertThat(phases("F R")).isEqualTo("red, steady");
    assertThat(phases("Iso G 4s")).isEqualTo("green 2 s, then dark 2 s");
    assertThat(phases("Fl(2)W. period 6s; fl. 1.0s, ec. 1.0s; fl. 1.0s, ec. 3.0s"))
        .isEqualTo("white 1 s, then dark 1 s, then white 1 s, then dark 3 s");
    assertThat(phases("Al.Oc BuY 3s"))
        .isEqualTo("blue 1 s, then dark 0.5 s, then yellow 1 s, then dark 0.5 s");
    assertThat(phases("Q(3) W 10s")).startsWith("2 times (white ").contains("), then white ");
    assertThat(phases("FFl W 10s")).contains("brighter");
  }

  @Test
  void tellsWhatIsAssumedOnlyWhereSomethingIs() {
    assertThat(WORDS.assumed(LightCharacter.parse("Iso W 4s"))).isEmpty();
    assertThat(WORDS.assumed(LightCharacter.parse("F W"))).isEmpty();
    assertThat(WORDS.assumed(LightCharacter.parse("Fl W 4s"))).contains("how long");
    assertThat(WORDS.assumed(LightCharacter.parse("Fl W"))).contains("no period");
  }

  @Test
  void tellsSectorsRangesAndElevationAsStated() {
    LightCharacter sectored = LightCharacter.parse("Fl(3)WRG.15s21m15-11M");
    assertThat(WORDS.colours(sectored)).isEqualTo("white, red, green in sectors; shown in white");
    assertThat(WORDS.seenFrom(sectored))
        .startsWith("elevation 21 m, range 15 M white")
        .contains("11 M green");
    assertThat(WORDS.seenFrom(LightCharacter.parse("Fl W 4s"))).isEmpty();
  }

  private static String phases(String character) {
    return WORDS.phases(LightCharacter.parse(character));
  }
}
