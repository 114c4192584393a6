package withy.core.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import withy.core.drill.Grounds.Kind;
import withy.core.drill.NextConcept.Why;
import withy.core.measurement.LearnerState;

class GroundsTest {
  @Test
  void tellsWhatIsNewFromWhatWasAnsweredTooFast() {
    assertThat(kind(Why.NEW, 0, 0)).isEqualTo(Kind.FIRST);
    assertThat(kind(Why.NEW, 2, 1)).isEqualTo(Kind.HURRIED);
  }

  @Test
  void saysOfAnOpenConceptWhetherItsAnswersDisagree() {
    assertThat(kind(Why.UNSETTLED, 3, 2)).isEqualTo(Kind.DISAGREEING);
    assertThat(kind(Why.UNSETTLED, 2, 2)).isEqualTo(Kind.RIGHT_SO_FAR);
    assertThat(kind(Why.UNSETTLED, 2, 0)).isEqualTo(Kind.WRONG_SO_FAR);
    assertThat(Grounds.of(new NextConcept("safe-water", Why.UNSETTLED), 3, 2).wrong()).isOne();
  }

  @Test
  void keepsToTheReasonOfTheChoiceElsewhere() {
    assertThat(kind(Why.BELIEF, 4, 0)).isEqualTo(Kind.BELIEF);
    assertThat(kind(Why.UNKNOWN, 4, 1)).isEqualTo(Kind.UNKNOWN);
    assertThat(kind(Why.KEPT_UP, 9, 9)).isEqualTo(Kind.KEPT_UP);
  }

  /** Even where nearly everybody knows it, so that nothing seems open before the first answer. */
  @Test
  void callsNewWhatWasNeverAnsweredHoweverLikelyItIsKnown() {
    LearnerState likely = new LearnerState("Ada", "region", 0, 0.995, new TreeMap<>(), 0.005);
    assertThat(NextConcept.of(new Standing(likely)).why()).isEqualTo(Why.NEW);
  }

  @Test
  void refusesMoreRightThanWereGiven() {
    assertThatThrownBy(() -> new Grounds("region", Kind.FIRST, 1, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2 right of 1");
  }

  private static Kind kind(Why why, int answers, int right) {
    return Grounds.of(new NextConcept("safe-water", why), answers, right).kind();
  }
}
