package withy.core.hydrography;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import withy.core.geometry.Area;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.hydrography.DepthSurvey.DepthArea;
import withy.core.hydrography.DepthSurvey.Dredged;
import withy.core.hydrography.DepthSurvey.Sounding;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;

class SurveyedDepthsTest {
  private static final Position CORNER = new Position(1000, 800);

  private static Area box(double west, double south, double east, double north) {
    return new Area(
        List.of(
            List.of(
                new Position(west, south),
                new Position(east, south),
                new Position(east, north),
                new Position(west, north))));
  }

  /** Land in the west, what dries beside it, and water that deepens to the east. */
  private static DepthSurvey shelf(List<Sounding> soundings, List<Danger> dangers) {
    return new DepthSurvey(
        List.of(
            new DepthArea(box(200, 0, 400, 800), -1, 0),
            new DepthArea(box(400, 0, 700, 800), 0, 5),
            new DepthArea(box(700, 0, 1000, 800), 5, 10)),
        List.of(box(0, 0, 200, 800)),
        soundings,
        List.of(),
        dangers);
  }

  private static DepthField depths(DepthSurvey survey) {
    return SurveyedDepths.of(survey, new Position(0, 0), CORNER);
  }

  @Test
  void deepensFromLimitToLimit() {
    DepthField field = depths(shelf(List.of(), List.of()));
    double last = Double.NEGATIVE_INFINITY;
    for (int x = 5; x < 1000; x += 10) {
      double depth = field.depth(new Position(x, 400));
      assertThat(depth).as("at %d m", x).isGreaterThanOrEqualTo(last - 0.05);
      last = depth;
    }
    assertThat(field.depth(new Position(100, 400))).isLessThan(-2.5);
    assertThat(field.depth(new Position(400, 400))).isCloseTo(0, within(0.2));
    assertThat(field.depth(new Position(550, 400))).isCloseTo(2.5, within(0.3));
    assertThat(field.depth(new Position(700, 400))).isCloseTo(5, within(0.3));
    assertThat(field.depth(new Position(995, 400))).isBetween(8.0, 10.0);
  }

  @Property(tries = 60)
  void holdsASoundingAtItsCellAndTheRangeOfItsAreaRound(
      @ForAll @DoubleRange(min = 410, max = 690) double x,
      @ForAll @DoubleRange(min = 10, max = 790) double y,
      @ForAll @DoubleRange(min = 0, max = 5) double depth) {
    DepthField field = depths(shelf(List.of(new Sounding(new Position(x, y), depth)), List.of()));
    Position cell = new Position(10 * Math.rint(x / 10), 10 * Math.rint(y / 10));
    assertThat(field.depth(cell)).isCloseTo(depth, within(0.051));
    for (int i = 410; i < 700; i += 10) {
      for (int k = 0; k < 800; k += 50) {
        assertThat(field.depth(new Position(i, k))).isBetween(0.0, 5.0);
      }
    }
  }

  @Test
  void ofTwoSoundingsInACellTheShallowerCounts() {
    Position place = new Position(550, 400);
    List<Sounding> both = List.of(new Sounding(place, 1.5), new Sounding(place, 4));
    assertThat(depths(shelf(both, List.of())).depth(place)).isCloseTo(1.5, within(0.05));
  }

  @Test
  void dangerRisesToItsLeastDepthHoweverSmall() {
    Position place = new Position(853, 407);
    Danger rock = new Danger(DangerKind.ROCK, place, 3, -0.7);
    DepthField field = depths(shelf(List.of(), List.of(rock)));
    assertThat(field.depth(new Position(850, 410))).isCloseTo(-0.7, within(0.05));
    assertThat(field.depth(new Position(890, 410))).isGreaterThan(5);
  }

  @Test
  void fairwayIsAsDeepAsItIsKeptFromEdgeToEdge() {
    Polyline line = Polyline.of(new Position(300, -50), new Position(320, 850));
    Fairway fairway = new Fairway("main", line, 80);
    DepthSurvey shelf = shelf(List.of(), List.of());
    DepthSurvey dredged =
        new DepthSurvey(
            shelf.areas(), shelf.land(), List.of(), List.of(new Dredged(fairway, 3.0)), List.of());
    DepthField field = depths(dredged);
    for (double along = 60; along < 840; along += 7) {
      for (double off : new double[] {-40, -20, 0, 20, 40}) {
        assertThat(field.depth(line.beside(along, off))).isGreaterThanOrEqualTo(2.95);
      }
      assertThat(field.depth(line.beside(along, -70))).isLessThan(0.5);
    }
  }

  @Test
  void fillsWhatNobodySurveyedFromWhatLiesNearest() {
    DepthSurvey gap =
        new DepthSurvey(
            List.of(new DepthArea(box(0, 0, 300, 800), 2, 4)),
            List.of(),
            List.of(new Sounding(new Position(900, 400), 8)),
            List.of(),
            List.of());
    DepthField field = depths(gap);
    assertThat(field.depth(new Position(880, 400))).isBetween(6.0, 8.1);
    assertThat(field.depth(new Position(340, 400))).isBetween(2.0, 4.6);
  }

  @Test
  void makesNoMoreCellsThanAllowedAndTheSameEveryTime() {
    List<DepthArea> wide = new ArrayList<>();
    wide.add(new DepthArea(box(0, 0, 9_900, 5_000), 1, 9));
    DepthSurvey survey = new DepthSurvey(wide, List.of(), List.of(), List.of(), List.of());
    Position corner = new Position(9_900, 5_000);
    DepthField field = SurveyedDepths.of(survey, new Position(0, 0), corner);
    assertThat(field.columns()).isLessThanOrEqualTo(SurveyedDepths.MOST_CELLS);
    assertThat(field.rows()).isLessThanOrEqualTo(SurveyedDepths.MOST_CELLS);
    assertThat(SurveyedDepths.of(survey, new Position(0, 0), corner)).isEqualTo(field);
  }
}
