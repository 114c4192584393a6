package withy.core.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.core.mark.Colour.BLACK;
import static withy.core.mark.Colour.BLUE;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;
import static withy.core.mark.Colour.YELLOW;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RecognitionTest {
  @ParameterizedTest
  @MethodSource("withy.core.mark.Practice#values")
  void knowsEveryMarkThatItsLookTellsAsItsOneKind(Practice practice) {
    for (MarkDescription mark : practice.marks()) {
      for (Appearance seen : mark.look().appearances(null)) {
        boolean bare = seen.topmark() == null && mark.look().topmarkPossible(seen.body());
        if (mark.isToldByLook() && !bare) {
          assertThat(Recognition.byDay(practice, seen)).as(mark.id()).containsExactly(mark.kind());
        }
      }
    }
  }

  @Test
  void knowsNothingInTheColoursOfTheOtherHand() {
    Appearance redCan =
        new Appearance(BodyShape.CAN, ColourPattern.PLAIN, List.of(RED), null, null);
    assertThat(Recognition.byDay(Practice.IALA_A, redCan)).containsExactly(MarkKind.PORT_HAND);
    assertThat(Recognition.byDay(Practice.IALA_B, redCan)).isEmpty();
  }

  @Test
  void knowsNoMarkWithATopmarkOfAnotherColour() {
    Topmark red = Topmark.of(TopmarkShape.TWO_SPHERES, RED);
    assertThat(Recognition.byDay(Practice.IALA_A, danger(red, BLACK, RED, BLACK))).isEmpty();
  }

  @Test
  void knowsAnIsolatedDangerByMoreThanOneRedBand() {
    assertThat(Recognition.byDay(Practice.IALA_A, danger(null, BLACK, RED, BLACK, RED, BLACK)))
        .containsExactly(MarkKind.ISOLATED_DANGER);
    assertThat(Recognition.byDay(Practice.IALA_A, danger(null, BLACK, RED))).isEmpty();
    assertThat(Recognition.byDay(Practice.IALA_A, danger(null, RED, BLACK, RED))).isEmpty();
  }

  @Test
  void knowsStripesFromEitherColour() {
    assertThat(striped(WHITE, RED)).containsExactly(MarkKind.SAFE_WATER);
    assertThat(striped(RED, WHITE, RED, WHITE)).containsExactly(MarkKind.SAFE_WATER);
    assertThat(striped(BLUE, YELLOW, BLUE, YELLOW, BLUE, YELLOW))
        .containsExactly(MarkKind.EMERGENCY_WRECK);
    assertThat(striped(RED, YELLOW)).isEmpty();
    assertThat(striped(RED, RED)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "iala-a, CAN, , port-hand preferred-channel-to-starboard",
    "iala-b, CONICAL, , starboard-hand preferred-channel-to-port",
    "iala-a, SPHERICAL, , safe-water",
    "iala-a, SPHERICAL, SPHERE, ''",
    "iala-a, PILLAR, , ''",
    "iala-a, PILLAR, SPHERE, safe-water",
    "iala-a, SPAR, TWO_CONES_BASE_TO_BASE, east-cardinal",
    "iala-a, CAN, X, special",
    "canada, SPAR, TWO_SPHERES, isolated-danger",
    "usa, PILLAR, TWO_CONES_UP, ''",
    "usa, PILLAR, , port-hand starboard-hand preferred-channel-to-starboard"
        + " preferred-channel-to-port"
  })
  void tellsSilhouettesByShapeAlone(
      Practice practice, BodyShape body, TopmarkShape topmark, String kinds) {
    List<String> known =
        Recognition.bySilhouette(practice, body, topmark).stream().map(MarkKind::id).toList();
    assertThat(String.join(" ", known)).isEqualTo(kinds);
  }

  private static Appearance danger(Topmark topmark, Colour... bands) {
    return new Appearance(
        BodyShape.PILLAR, ColourPattern.HORIZONTAL, List.of(bands), topmark, null);
  }

  private static List<MarkKind> striped(Colour... stripes) {
    return Recognition.byDay(
        Practice.IALA_B,
        new Appearance(BodyShape.PILLAR, ColourPattern.VERTICAL, List.of(stripes), null, null));
  }
}
