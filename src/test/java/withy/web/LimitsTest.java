package withy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class LimitsTest {
  private final HandClock clock = new HandClock();
  private final Limits limits = new Limits(clock);

  @Test
  void letTwentyResponsesPassAtOnceAndTenASecondAfter() {
    assertThat(passing("l", 30)).isEqualTo(20);
    clock.pass(Duration.ofSeconds(1));
    assertThat(passing("l", 30)).isEqualTo(10);
    clock.pass(Duration.ofMillis(500));
    assertThat(passing("l", 30)).isEqualTo(5);
  }

  @Test
  void measureEachLearnerAlone() {
    assertThat(passing("one", 30)).isEqualTo(20);
    assertThat(passing("another", 30)).isEqualTo(20);
  }

  @Test
  void sayHowLongToWait() {
    passing("l", 20);
    Throwable declined = catchThrowable(() -> limits.response("l"));
    assertThat(((Declined) declined).fault()).isEqualTo(Fault.TOO_MANY_RESPONSES);
    assertThat(((Declined) declined).retryAfterSeconds()).isEqualTo(1);
  }

  private int passing(String learner, int tries) {
    int passed = 0;
    for (int i = 0; i < tries; i++) {
      if (catchThrowable(() -> limits.response(learner)) == null) {
        passed++;
      }
    }
    return passed;
  }
}
