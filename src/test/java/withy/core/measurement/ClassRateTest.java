package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ClassRateTest {
  @Test
  void saysLittleOfOneLearner() {
    ClassRate rate = ClassRate.of(List.of(new Tally(4, 1)), 12);
    double p = (1 + (0.25 + 0.5) / 2) / 5;
    assertThat(rate.variance()).isEqualTo(p * (1 - p) / 4, within(1e-15));
    assertThat(rate.effectiveAnswers()).isEqualTo(0.25 * 0.75 / rate.variance(), within(1e-12));
    assertThat(rate.wide()).isTrue();
  }

  @Test
  void reachesToZeroWhereNobodyErred() {
    ClassRate rate = ClassRate.of(List.of(new Tally(2, 0), new Tally(4, 0)), 2);
    assertThat(rate.lower()).isZero();
    assertThat(rate.effectiveAnswers()).isEqualTo(4 / 0.75, within(1e-12));
    assertThat(rate.upper()).isBetween(0.01, 0.99);
  }

  @Test
  void reachesToOneWhereEverybodyErred() {
    ClassRate rate = ClassRate.of(List.of(new Tally(2, 2), new Tally(4, 4)), 2);
    assertThat(rate.upper()).isEqualTo(1);
    assertThat(rate.mean()).isEqualTo(1);
    assertThat(rate.lower()).isBetween(0.01, 0.99);
    assertThat(rate.aboveTolerance()).isGreaterThan(0.95);
  }

  @Test
  void doesNotLetTheOneWhoAnsweredMostOutvoteTheOthers() {
    List<Tally> tallies =
        List.of(new Tally(30, 30), new Tally(2, 0), new Tally(2, 0), new Tally(2, 0));
    assertThat(ClassRate.of(tallies, 4).mean()).isEqualTo(0.25);
  }

  @Test
  void isLessSureTheMoreAreAbsent() {
    List<Tally> tallies = List.of(new Tally(4, 0), new Tally(4, 4), new Tally(4, 2));
    double all = ClassRate.of(tallies, 3).variance();
    double some = ClassRate.of(tallies, 6).variance();
    assertThat(some - all).isEqualTo(0.25 / 3 / 2, within(1e-15));
  }

  @Test
  void keepsAtLeastOneEffectiveAnswer() {
    List<Tally> tallies = List.of(new Tally(9, 0), new Tally(9, 9));
    assertThat(ClassRate.of(tallies, 1000).effectiveAnswers()).isEqualTo(1);
  }

  @Test
  void refusesMoreLearnersThanTheClassHas() {
    List<Tally> two = Collections.nCopies(2, new Tally(1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> ClassRate.of(two, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> ClassRate.of(List.of(), 1));
  }

  @Test
  void refusesATallyOfNothingOrOfMoreErrorsThanAnswers() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Tally(0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Tally(3, 4));
    assertThatIllegalArgumentException().isThrownBy(() -> new Tally(3, -1));
  }
}
