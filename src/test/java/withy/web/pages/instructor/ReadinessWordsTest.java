package withy.web.pages.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.measurement.SequentialTest.Stand;
import withy.usecase.JudgeReadiness.Readiness;
import withy.usecase.JudgeReadiness.Verdict;
import withy.wording.Wording;

class ReadinessWordsTest {
  private static final ReadinessWords WORDS =
      new ReadinessWords(new Phrases(Wording.of(Locale.ENGLISH)));
  private static final Verdict READY =
      new Verdict("1", "Ada", "drill", Stand.READY, 9, 9, 1, List.of());
  private static final Verdict HELD =
      new Verdict("2", "Bo", "drill", Stand.READY, 17, 20, 1, List.of(Concept.CARDINAL_SIDE));
  private static final Verdict NONE = new Verdict("3", "Cy", null, null, 0, 0, 0, List.of());

  @Test
  void namesThoseWhoHaveBegunNoDrillWhereOthersHave() {
    assertThat(WORDS.silent(of(READY, NONE))).isEqualTo("No readiness drill begun yet: Cy.");
    assertThat(WORDS.silent(of(READY, HELD))).isNull();
    assertThat(WORDS.silent(of(NONE))).isNull();
  }

  private static Readiness of(Verdict... verdicts) {
    return new Readiness(List.of(verdicts), 0, 0, null);
  }
}
