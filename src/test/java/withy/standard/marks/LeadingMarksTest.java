package withy.standard.marks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.mark.MarkRule;
import withy.core.waterway.LeadingPair;
import withy.core.waterway.Steering;
import withy.standard.Covers;

/** What a helmsman does by leading marks ahead and astern. */
class LeadingMarksTest {
  @ParameterizedTest
  @CsvFileSource(resources = "leading_marks.csv", useHeadersInDisplayName = true)
  @Covers({
    MarkRule.LEADING_MARKS_IN_LINE,
    MarkRule.LEADING_STEER_TO_FRONT_MARK,
    MarkRule.LEADING_ASTERN_REVERSED
  })
  void steersAsThePublishedRuleSays(String seen, double frontRightOfRear, String steering) {
    Bearing rear = Bearing.of(0.5);
    LeadingPair marks = new LeadingPair(rear.plus(frontRightOfRear), rear);
    Bearing heading = seen.equals("ahead") ? Bearing.of(350) : Bearing.of(170);
    assertThat(marks.steering(heading)).contains(Term.parse(Steering.class, steering));
  }

  @Test
  void saysNothingOfMarksThatAreNeitherInLineNorClearlyOpen() {
    for (double open : new double[] {-1, -0.5, 0.4, 1}) {
      LeadingPair marks = new LeadingPair(Bearing.of(100 + open), Bearing.of(100));
      assertThat(marks.steering(Bearing.of(100))).isEmpty();
    }
  }

  /** A line on 042° is kept by a boat that sees both marks bear 042°, or steers 222° from them. */
  @Test
  @Covers(MarkRule.LEADING_LINE_CHARTED)
  void seesBothMarksOnTheChartedBearingWhenOnTheLine() {
    Bearing charted = Bearing.of(42);
    LeadingPair marks = new LeadingPair(charted, charted);
    assertThat(marks.steering(charted)).contains(Steering.ON_THE_LINE);
    assertThat(marks.steering(charted.reciprocal())).contains(Steering.ON_THE_LINE);
  }
}
