package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.measurement.SessionChange.Trend;

class SessionChangeTest {
  private static final int LEARNERS = 10;

  private static ClassRate rate(int errors, int answers) {
    List<Tally> tallies = new ArrayList<>();
    for (int i = 0; i < LEARNERS; i++) {
      tallies.add(new Tally(answers, errors));
    }
    return ClassRate.of(tallies, LEARNERS);
  }

  @ParameterizedTest
  @CsvSource({"6, 1, BETTER", "1, 6, WORSE", "4, 4, UNCLEAR", "4, 3, UNCLEAR"})
  void namesAChangeOnlyWhereTheRangesLieApart(int before, int now, Trend trend) {
    SessionChange change =
        new SessionChange("lateral-side", rate(before, LEARNERS), rate(now, LEARNERS));
    assertThat(change.trend()).isEqualTo(trend);
    assertThat(change.learners()).isEqualTo(LEARNERS);
    assertThat(change.before().mean()).isEqualTo(before / 10.0, within(1e-12));
  }
}
