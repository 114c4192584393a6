package withy.core.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightTimelineTest {

  private static final LightColour RED = LightColour.RED;

  private static LightTimeline of(Phase... phases) {
    return new LightTimeline(List.of(phases), false);
  }

  @Test
  void mergesNeighboursAlsoAcrossTheEndOfThePeriod() {
    LightTimeline split =
        of(Phase.light(RED, 200), Phase.eclipse(1000), Phase.eclipse(2000), Phase.light(RED, 300));
    assertThat(split.merged().phases()).containsExactly(Phase.eclipse(3000), Phase.light(RED, 500));
    assertThat(split.flashes()).isEqualTo(1);
    assertThat(split.sameRhythmAs(of(Phase.light(RED, 500), Phase.eclipse(3000)))).isTrue();
  }

  @Test
  void comparesWhatIsSeenAndNotWhereTheListBegins() {
    LightTimeline flash = of(Phase.light(RED, 500), Phase.eclipse(1500));
    assertThat(flash.sameRhythmAs(of(Phase.eclipse(1500), Phase.light(RED, 500)))).isTrue();
    assertThat(flash.sameRhythmAs(of(Phase.light(RED, 1500), Phase.eclipse(500)))).isFalse();
    LightTimeline green = of(Phase.light(LightColour.GREEN, 500), Phase.eclipse(1500));
    assertThat(flash.sameRhythmAs(green)).isFalse();
    assertThat(flash.sameRhythmAs(of(Phase.light(RED, 500)))).isFalse();
  }

  @Test
  void aFixedLightHasNoPeriodAndNoFlashes() {
    LightTimeline fixed = of(Phase.light(RED, 1000), Phase.light(RED, 500));
    assertThat(fixed.periodMillis()).isEmpty();
    assertThat(fixed.flashes()).isZero();
    assertThat(fixed.mostFlashesInOneSecond()).isZero();
    assertThat(fixed.sameRhythmAs(of(Phase.light(RED, 1)))).isTrue();
  }

  @Test
  void tellsWhatIsShownAtAnyTime() {
    LightTimeline flash = of(Phase.light(RED, 500), Phase.eclipse(1500));
    assertThat(flash.at(0).dark()).isFalse();
    assertThat(flash.at(499).dark()).isFalse();
    assertThat(flash.at(500).dark()).isTrue();
    assertThat(flash.at(2000).dark()).isFalse();
    assertThat(flash.at(-1).dark()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "F, 0",
    "Fl 4s, 1",
    "Q, 1",
    "VQ, 2",
    "VQ 0.4s, 3",
    "UQ, 4",
    "UQ 0.2s, 5",
    "Fl(2) 5s, 1",
    "Fl(2+1) 6s, 2",
    "Al.Oc BuY 3s, 1",
    "Al WR 0.5s, 4",
    "FFl 10s, 1"
  })
  void countsTheMostFlashesThatBeginWithinASecond(String text, int most) {
    assertThat(LightCharacter.parse(text).timeline().mostFlashesInOneSecond()).isEqualTo(most);
  }

  @Test
  void aPhaseLastsAndAnEclipseIsDark() {
    assertThatIllegalArgumentException().isThrownBy(() -> Phase.eclipse(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Phase(null, 1, true));
    assertThatIllegalArgumentException().isThrownBy(() -> of());
  }

  @Test
  void classifiesNothingThatNoClassDescribes() {
    assertThat(Rhythm.classify(of(Phase.eclipse(1000)))).isEmpty();
    assertThat(
            Rhythm.classify(
                of(
                    Phase.light(RED, 500),
                    Phase.light(LightColour.GREEN, 500),
                    Phase.eclipse(3000))))
        .isEmpty();
  }

  @Test
  void classifiesAPeriodWrittenTwiceAsOnce() {
    LightTimeline twice =
        of(Phase.light(RED, 300), Phase.eclipse(700), Phase.light(RED, 300), Phase.eclipse(700));
    assertThat(Rhythm.classify(twice)).contains(LightCharacter.parse("Q").rhythm());
  }
}
