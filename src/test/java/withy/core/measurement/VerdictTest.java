package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.Term;

class VerdictTest {
  @ParameterizedTest
  @CsvSource({
    "3, 9, 8, 0.90, weak",
    "3, 9, 8, 0.8999, watch",
    "3, 9, 8, 0.80, watch",
    "3, 9, 8, 0.7999, sound",
    "3, 10, 8, 0.99, too-little",
    "2, 2, 8, 0.99, too-little",
    "3, 9, 7, 0.99, too-little"
  })
  void needsThreeLearnersAThirdOfTheClassAndEightAnswers(
      int learners, int classSize, int answers, double above, String verdict) {
    assertThat(Verdict.of(learners, classSize, answers, above))
        .isEqualTo(Term.parse(Verdict.class, verdict));
  }

  @Test
  void doesNotOverflowInAClassOfMillions() {
    int many = Integer.MAX_VALUE;
    assertThat(Verdict.of(many, many, many, 0.95)).isEqualTo(Verdict.WEAK);
  }
}
