package withy.core.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Domain(Characters.class)
@Domain(DomainContext.Global.class)
class LightCharacterPropertyTest {

  private static final int TRIES = 400;

  @Property(tries = TRIES)
  void readsItsOwnNotation(@ForAll LightCharacter light) {
    assertThat(LightCharacter.parse(light.notation())).isEqualTo(light);
  }

  @Property(tries = TRIES)
  void readsItsOwnNotationWithTheTimesStated(@ForAll LightCharacter light) {
    Assume.that(light.lightClass() != LightClass.FIXED);
    LightCharacter stated = stated(light);
    assertThat(LightCharacter.parse(stated.notation())).isEqualTo(stated);
    assertThat(stated.timeline().sameRhythmAs(light.timeline())).isTrue();
    assertThat(stated.timeline().assumed()).isFalse();
  }

  @Property(tries = TRIES)
  void letterCaseSaysNothing(@ForAll LightCharacter light) {
    String notation = light.notation();
    assertThat(LightCharacter.parse(notation.toUpperCase(Locale.ROOT))).isEqualTo(light);
    assertThat(LightCharacter.parse(notation.toLowerCase(Locale.ROOT))).isEqualTo(light);
  }

  @Property(tries = TRIES)
  void phasesAddUpToThePeriod(@ForAll LightCharacter light) {
    LightTimeline timeline = light.timeline();
    OptionalInt period = timeline.periodMillis();
    int sum = timeline.phases().stream().mapToInt(Phase::millis).sum();
    assertThat(period.isEmpty()).isEqualTo(light.lightClass() == LightClass.FIXED);
    period.ifPresent(millis -> assertThat(sum).isEqualTo(millis));
    light.periodMillis().ifPresent(stated -> assertThat(period).hasValue(stated));
  }

  @Property(tries = TRIES)
  void showsAsManyFlashesAsTheGroupSays(@ForAll LightCharacter light) {
    Assume.that(!light.group().isEmpty());
    int flashes = light.rhythm().count() + (light.lightClass().endsWithLongFlash() ? 1 : 0);
    assertThat(light.timeline().flashes()).isEqualTo(flashes);
  }

  @Property(tries = TRIES)
  void neverFlashesFasterThanThreeHundredAMinute(@ForAll LightCharacter light) {
    assertThat(light.timeline().mostFlashesInOneSecond()).isLessThanOrEqualTo(5);
  }

  @Property(tries = TRIES)
  void turningATimelineChangesNoRhythm(@ForAll LightCharacter light) {
    List<Phase> turned = new ArrayList<>(light.timeline().phases());
    Collections.rotate(turned, 1);
    LightTimeline other = new LightTimeline(turned, false);
    assertThat(light.timeline().sameRhythmAs(other)).isTrue();
    assertThat(other.flashes()).isEqualTo(light.timeline().flashes());
    assertThat(other.mostFlashesInOneSecond()).isEqualTo(light.timeline().mostFlashesInOneSecond());
  }

  @Property(tries = TRIES)
  void theTimelineTellsTheClassAgain(@ForAll LightCharacter light) {
    Assume.that(unmistakable(light));
    Rhythm told = Rhythm.classify(light.timeline()).orElseThrow();
    assertThat(told.lightClass()).as(light.notation()).isEqualTo(light.lightClass());
    if (!light.lightClass().alternates()) {
      assertThat(told.morse()).isEqualTo(light.morse());
      assertThat(twice(told.group())).containsSequence(light.group());
    }
  }

  @Property(tries = TRIES)
  void refusesAnyTextThatIsNoCharacterWithAReason(@ForAll("texts") String text) {
    Throwable thrown = catchThrowable(() -> LightCharacter.parse(text));
    if (thrown != null) {
      assertThat(thrown).as(text).isInstanceOf(LightNotationException.class);
    }
  }

  @Provide
  Arbitrary<String> texts() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "Fl",
            "Q",
            "VQ",
            "Mo",
            "Al",
            "Oc",
            "Iso",
            "LFl",
            "F",
            "Gp",
            "Int",
            "(",
            ")",
            "[",
            "]",
            "+",
            "-",
            "/",
            ".",
            ",",
            ";",
            " ",
            "W",
            "R",
            "Bu",
            "s",
            "m",
            "M",
            "ft",
            "fl.",
            "ec.",
            "period",
            "no",
            "timings",
            "0",
            "1",
            "3",
            "0.3",
            "15",
            "99999999999",
            "A",
            "\ud83d",
            "\u00e9",
            "\"",
            "'",
            "%",
            "{0}",
            "1.00001",
            "\u0663");
    Arbitrary<String> assembled = pieces.list().ofMaxSize(14).map(each -> String.join("", each));
    return Arbitraries.oneOf(assembled, Arbitraries.strings().ofMaxLength(30));
  }

  private static LightCharacter stated(LightCharacter light) {
    return new LightCharacter(
        light.rhythm(),
        light.colours(),
        light.periodMillis(),
        light.elevation(),
        light.ranges(),
        light.timeline().phases());
  }

  /**
   * Left out is what two classes share: letters of dots or dashes only, short sequences before a
   * long flash that are a letter, and groups of quick flashes that fill most of the period.
   */
  private static boolean unmistakable(LightCharacter light) {
    int count = light.rhythm().count();
    return switch (light.lightClass()) {
      case MORSE -> MorseCode.signs(light.morse()).matches("(?=.*\\.)(?=.*-)[.-]{2,}( [.-]{2,})*");
      case GROUP_QUICK_AND_LONG_FLASH, GROUP_VERY_QUICK_AND_LONG_FLASH -> count >= 5;
      case GROUP_QUICK -> sparse(light, 1000);
      case GROUP_VERY_QUICK -> sparse(light, 500);
      default -> true;
    };
  }

  private static boolean sparse(LightCharacter light, int cycle) {
    int count = light.rhythm().count();
    int period = light.timeline().periodMillis().orElseThrow();
    return count <= 3 || count == 9 || 2 * count * cycle < period;
  }

  private static List<Integer> twice(List<Integer> group) {
    List<Integer> twice = new ArrayList<>(group);
    twice.addAll(group);
    return twice;
  }
}
