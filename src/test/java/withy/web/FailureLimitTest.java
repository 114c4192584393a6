package withy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import withy.usecase.Reason;
import withy.usecase.Refused;

class FailureLimitTest {
  private final HandClock clock = new HandClock();
  private final FailureLimit limit = new FailureLimit(clock);

  @Test
  void holdsUpAnAddressAfterTenFailuresInAMinute() {
    fail("a", 10);
    assertThat(waits("a")).isEqualTo(6);
    clock.pass(Duration.ofSeconds(6));
    assertThat(waits("a")).isNull();
    assertThat(waits("b")).isNull();
  }

  @Test
  void letsAnAddressFailAboutAHundredTimesInTenMinutes() {
    int failed = 0;
    for (int step = 0; step < 120; step++) {
      if (waits("a") == null) {
        fail("a", 1);
        failed++;
      }
      clock.pass(Duration.ofSeconds(5));
    }
    assertThat(failed).isBetween(90, 110);
    clock.pass(Duration.ofMinutes(10));
    assertThat(waits("a")).isNull();
  }

  @Test
  void pausesForAMinuteAfterThreeHundredFailuresInAll() {
    for (int address = 0; address < 30; address++) {
      fail("address " + address, 10);
    }
    assertThat(waits("any other")).isEqualTo(60);
    clock.pass(Duration.ofSeconds(61));
    assertThat(waits("any other")).isNull();
  }

  @Test
  void countsFailuresAlone() {
    for (int join = 0; join < 1000; join++) {
      assertThat(waits("one address for all")).isNull();
    }
  }

  @Test
  void countsNoRefusalThatIsNoGuess() {
    for (int i = 0; i < 50; i++) {
      Throwable taken =
          catchThrowable(() -> limit.guess("a", this::isGuess, () -> refuse(Reason.CLASS_FULL)));
      assertThat(taken).isInstanceOf(Refused.class);
    }
    assertThat(waits("a")).isNull();
  }

  @Test
  void letsNoGuessGoFreeThatWasSentAtOnceWithOthers() throws Exception {
    int guesses = 40;
    CountDownLatch all = new CountDownLatch(guesses);
    ExecutorService threads = Executors.newFixedThreadPool(guesses);
    for (int i = 0; i < guesses; i++) {
      threads.execute(
          () ->
              catchThrowable(
                  () ->
                      limit.guess(
                          "a",
                          this::isGuess,
                          () -> {
                            all.countDown();
                            await(all);
                            return refuse(Reason.UNKNOWN_CODE);
                          })));
    }
    threads.shutdown();
    assertThat(threads.awaitTermination(10, java.util.concurrent.TimeUnit.SECONDS)).isTrue();
    assertThat(waits("a")).as("forty at six seconds each, ten were free").isEqualTo(31 * 6);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private void fail(String address, int times) {
    for (int i = 0; i < times; i++) {
      assertThatThrownBy(
              () -> limit.guess(address, this::isGuess, () -> refuse(Reason.UNKNOWN_CODE)))
          .isInstanceOf(Refused.class);
    }
  }

  /** Seconds to wait, null where the address may try. */
  private Long waits(String address) {
    Throwable thrown = catchThrowable(() -> limit.guess(address, this::isGuess, () -> "in"));
    return thrown instanceof Declined declined ? declined.retryAfterSeconds() : null;
  }

  private boolean isGuess(Refused refused) {
    return refused.reason() == Reason.UNKNOWN_CODE;
  }

  private static String refuse(Reason reason) {
    throw new Refused(reason);
  }
}
