package withy.core.hydrography;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import withy.core.Chance;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.mark.Colour;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

class SurveyedWaterTest {
  private static final Chance CHANCE = Chance.of(1, 1);

  /** A dredged cut running north, 120 m wide, through flats that dry. */
  private static SurveyedWater cut(SurveyedMark... marks) {
    double[] depths = new double[60 * 60];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = Math.abs(i % 60 - 30) <= 3 ? 4 : -0.5;
    }
    Polyline line = Polyline.of(new Position(600, 0), new Position(600, 1180));
    return new SurveyedWater(
        "the-cut",
        "The Cut",
        new DepthField(new Position(0, 0), 20, 60, depths),
        0,
        List.of(new Fairway("main", line, 110)),
        List.of(new Danger(DangerKind.ROCK, new Position(100, 600), 30, -0.5)),
        List.of(marks));
  }

  private static SurveyedMark mark(MarkKind kind, double x, double y, @Nullable String label) {
    LightCharacter light = LightCharacter.parse("Fl(3) R 10s");
    return new SurveyedMark(kind, new Position(x, y), "main", label, null, false, light);
  }

  private static PlacedMark only(SurveyedWater water, Practice practice) {
    List<PlacedMark> marks = water.marked(practice, CHANCE).marks();
    assertThat(marks).hasSize(1);
    return marks.get(0);
  }

  @Test
  void swapsColoursLightsAndNumbersWithTheRegion() {
    SurveyedWater water = cut(mark(MarkKind.PORT_HAND, 540, 600, "4"));
    PlacedMark inA = only(water, Practice.IALA_A);
    PlacedMark inB = only(water, Practice.IALA_B);
    assertThat(inA.appearance().colours()).containsExactly(Colour.RED);
    assertThat(inB.appearance().colours()).containsExactly(Colour.GREEN);
    assertThat(inA.label()).isEqualTo("4");
    assertThat(inB.label()).isEqualTo("3");
    assertThat(notation(inA)).isEqualTo("Fl(3) R 10s");
    assertThat(notation(inB)).isEqualTo("Fl(3) G 10s");
    assertThat(inB.kind()).isEqualTo(MarkKind.PORT_HAND);
    assertThat(inB.position()).isEqualTo(inA.position());
  }

  private static String notation(PlacedMark mark) {
    return Objects.requireNonNull(mark.appearance().light()).shortNotation();
  }

  @Test
  void showsTheUsualLightWhereThePracticeForbidsTheRhythm() {
    LightCharacter reserved = LightCharacter.parse("Fl(2+1) R 6s");
    SurveyedMark odd =
        new SurveyedMark(
            MarkKind.PORT_HAND, new Position(540, 600), "main", "2", null, false, reserved);
    LightCharacter shown = only(cut(odd), Practice.IALA_A).appearance().light();
    assertThat(shown)
        .isEqualTo(Practice.IALA_A.mark(MarkKind.PORT_HAND).orElseThrow().look().lights().get(0));
  }

  @Test
  void leavesCardinalsOutWhereThereAreNoneAndMarksTheirDangerItself() {
    SurveyedMark west =
        new SurveyedMark(
            MarkKind.WEST_CARDINAL, new Position(40, 600), null, null, null, false, null);
    assertThat(only(cut(west), Practice.CANADA).kind()).isEqualTo(MarkKind.WEST_CARDINAL);
    PlacedMark inUsa = only(cut(west), Practice.USA);
    assertThat(inUsa.kind()).isEqualTo(MarkKind.ISOLATED_DANGER);
    assertThat(inUsa.position()).isEqualTo(new Position(100, 600));
  }

  @Test
  void makesASpecialMarkOfANationalOneThatThePracticeLacks() {
    SurveyedMark mooring =
        new SurveyedMark(MarkKind.MOORING, new Position(600, 900), null, null, null, false, null);
    assertThat(only(cut(mooring), Practice.USA).kind()).isEqualTo(MarkKind.MOORING);
    assertThat(only(cut(mooring), Practice.IALA_A).kind()).isEqualTo(MarkKind.SPECIAL);
  }

  @Test
  void tellsWhatTheDepthsSayOfALateralMark() {
    assertThat(check(mark(MarkKind.PORT_HAND, 540, 600, null))).isEqualTo(LateralCheck.BORNE_OUT);
    assertThat(check(mark(MarkKind.STARBOARD_HAND, 540, 600, null)))
        .isEqualTo(LateralCheck.CONTRADICTED);
  }

  private static LateralCheck check(SurveyedMark surveyed) {
    Waterway water = cut(surveyed).marked(Practice.IALA_A, CHANCE);
    return LateralCheck.of(Practice.IALA_A, water, water.marks().get(0), Keel.CRUISER)
        .orElseThrow();
  }

  @Test
  void looksTheSameFromTheSameChance() {
    List<SurveyedMark> marks = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      marks.add(mark(MarkKind.PORT_HAND, 540, 200 + 100 * i, null));
    }
    SurveyedWater water = cut(marks.toArray(SurveyedMark[]::new));
    assertThat(water.marked(Practice.IALA_A, Chance.of(5, 2)))
        .isEqualTo(water.marked(Practice.IALA_A, Chance.of(5, 2)));
  }

  @Test
  void refusesAMarkOfAFairwayThatIsNotThere() {
    SurveyedMark lost =
        new SurveyedMark(
            MarkKind.PORT_HAND, new Position(1, 1), "elsewhere", null, null, false, null);
    assertThatThrownBy(() -> cut(lost))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("elsewhere");
  }
}
