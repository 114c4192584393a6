package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.wording.Wording;

class WordsOfFaultsTest {
  private final Wording words = Wording.of(Locale.ENGLISH);

  @ParameterizedTest
  @EnumSource(Fault.class)
  void tellEveryFaultInATitleAndASentence(Fault fault) {
    Problem problem = Problem.of(Declined.of(fault, "what.", "else"), words, "/api/somewhere");
    assertThat(problem.title()).isNotBlank().doesNotContain("{", "''").doesNotEndWith(".");
    assertThat(problem.detail()).isNotBlank().doesNotContain("{", "''").endsWith(".");
    assertThat(problem.status()).isBetween(400, 503);
  }

  @ParameterizedTest
  @EnumSource(Reason.class)
  void tellEveryRefusalOfAUseCase(Reason reason) {
    assertThat(Declined.of(new Refused(reason, "what")).fault().id()).isNotBlank();
  }
}
