package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairedAnswersTest {
  @Test
  void countsWhoWasRightBeforeAndNow() {
    PairedAnswers answers = new PairedAnswers(4, 6, 1, 2);
    assertThat(answers.learners()).isEqualTo(13);
    assertThat(answers.rightBefore()).isEqualTo(5);
    assertThat(answers.rightNow()).isEqualTo(10);
  }

  /**
   * The first: one pair of 8 against 12, exact p .503, computed with scipy for the confusions of
   * the project's reference. The others are sums of binomial coefficients over powers of two, by
   * hand: 2 (1 + 7) / 2^7, 2 / 2^5, all of 2^4.
   */
  @ParameterizedTest
  @CsvSource({"8, 12, 0.503, 0.0005", "6, 1, 0.125, 1e-12", "5, 0, 0.0625, 1e-12", "2, 2, 1, 0"})
  void comparesThoseWhoTurnedWithEvenChances(int gained, int lost, double chance, double slack) {
    assertThat(new PairedAnswers(3, gained, lost, 2).chance()).isEqualTo(chance, within(slack));
    assertThat(new PairedAnswers(0, lost, gained, 9).chance()).isEqualTo(chance, within(slack));
  }

  @Test
  void seesNoChangeWhereNobodyTurned() {
    assertThat(new PairedAnswers(3, 0, 0, 2).chance()).isEqualTo(1);
  }

  @Test
  void refusesNegativeCounts() {
    assertThatThrownBy(() -> new PairedAnswers(1, -1, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
