package withy.web.pages.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.measurement.ClassRate;
import withy.core.measurement.ConceptError;
import withy.core.measurement.Verdict;
import withy.wording.Wording;

class PhrasesTest {
  private final Phrases phrases = new Phrases(Wording.of(Locale.ENGLISH));

  @ParameterizedTest
  @CsvSource({
    "0.95, Weak",
    "0.85, Watch",
    "0.79, Open either way",
    "0.21, Open either way",
    "0.20, Sound",
    "0.00, Sound"
  })
  void callsAConceptSoundOnlyWhereThatIsSure(double aboveTolerance, String said) {
    assertThat(phrases.verdict(error(aboveTolerance))).isEqualTo(said);
  }

  private static ConceptError error(double aboveTolerance) {
    ClassRate rate = new ClassRate(12, 40, 0.25, 0.01, 20, 5, 0.1, 0.5, aboveTolerance);
    Verdict verdict = Verdict.of(12, 12, 40, aboveTolerance);
    return new ConceptError("lateral-side", rate, verdict, List.of());
  }
}
