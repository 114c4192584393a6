package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.item.Form;
import withy.core.item.Misconception;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.scenario.Clearance;
import withy.core.scenario.PlottedTrack;
import withy.core.scenario.PlottedTrack.Purpose;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.TimeOfDay;
import withy.core.scenario.View;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.DepthField;
import withy.core.waterway.Keel;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** Beliefs about clearance (common practice, no published source) lead to the tracks they say. */
class ClearanceMisconceptionsTest {
  private static final Position ROCK = new Position(500, 500);
  private static final Position MARK = new Position(500, 685.2);

  /** The beliefs that are tried here. */
  static Set<Misconception> beliefs() {
    return EnumSet.of(
        Misconception.HUGS_THE_MARK,
        Misconception.CABLE_TAKEN_FOR_HUNDRED_METRES,
        Misconception.DANGER_PASSED_WITH_MARK,
        Misconception.MARK_MEASURED_FOR_DANGER);
  }

  /** M30 and three without a number. */
  @ParameterizedTest
  @CsvSource({
    "hugs-the-mark, alongside, track-a",
    "cable-taken-for-hundred-metres, hundreds, track-a",
    "danger-at-mark, any-side, track-a",
    "danger-passed-with-mark, turn-in, track-a"
  })
  void beliefChoosesTheTrackThatWasPlottedForIt(String belief, String purpose, String answer) {
    PlottedTrack track = track("A", 900, Term.parse(Purpose.class, purpose));
    Scenario scenario = scenario(1, track, track("B", 950, Purpose.CLEAR));
    assertThat(Term.parse(Misconception.class, belief).answer(Form.CLEARANCE, scenario))
        .contains(answer);
    assertThat(Misconception.REGION_SWAPPED.answer(Form.CLEARANCE, scenario)).isEmpty();
  }

  /** 370.4 m off the rock, 185.2 m off the mark: two cables, and one. */
  @ParameterizedTest
  @CsvSource({"mark-measured-for-danger, 1", "cable-taken-for-hundred-metres, 3.7"})
  void beliefMeasuresAnotherDistanceThanTwoCables(String belief, String answer) {
    Scenario scenario = scenario(0, track("A", 870.4, Purpose.CLEAR));
    assertThat(Term.parse(Misconception.class, belief).answer(Form.CLEARANCE, scenario))
        .contains(answer);
    Clearance drawn = Objects.requireNonNull(scenario.sailing()).clearance();
    assertThat(track("A", 870.4, Purpose.CLEAR).line().foot(ROCK).distance() / Clearance.CABLE)
        .isEqualTo(2.0);
    assertThat(drawn).isNotNull();
  }

  private static PlottedTrack track(String letter, double north, Purpose purpose) {
    Polyline line = Polyline.of(new Position(100, north), new Position(900, north));
    return new PlottedTrack(letter, line, purpose);
  }

  private static Scenario scenario(double cables, PlottedTrack... tracks) {
    PlacedMark mark =
        new PlacedMark(
            MarkKind.NORTH_CARDINAL,
            MARK,
            null,
            null,
            MarkingRules.mark(Practice.IALA_A, MarkKind.NORTH_CARDINAL).look().typical());
    Danger rock = new Danger(DangerKind.ROCK, ROCK, 80, 0.2);
    DepthField deep = new DepthField(new Position(0, 0), 1000, 2, new double[] {9, 9, 9, 9});
    Waterway water = new Waterway(deep, 0, List.of(), List.of(rock), List.of(mark));
    Sailing sailing = new Sailing(water, Keel.CRUISER, new Position(100, 685), List.of(mark));
    Situation situation = Situation.steering(Bearing.of(90), TimeOfDay.DAY, View.NEAR);
    return new Scenario(Practice.IALA_A, situation, List.of())
        .in(sailing.clearing(new Clearance(rock, mark, cables, List.of(tracks))));
  }
}
