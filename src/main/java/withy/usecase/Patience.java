package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Makes whoever gives wrong passwords for a name wait 1, 2, 4 … 60 seconds. Nobody is shut out for
 * good, or a stranger could do it to an instructor; tries during the wait do not lengthen it.
 */
final class Patience {
  private static final int LONGEST_SECONDS = 60;
  private static final int NAMES = 10_000;

  private final Cache<String, Failures> failures =
      Caffeine.newBuilder().maximumSize(NAMES).expireAfterWrite(Duration.ofHours(1)).build();
  private final Clock clock;

  Patience(Clock clock) {
    this.clock = clock;
  }

  private record Failures(int count, Instant last) {
    Duration delay() {
      return Duration.ofSeconds(Math.min(LONGEST_SECONDS, 1L << Math.min(count - 1, 6)));
    }
  }

  /**
   * @throws Refused while the name has to wait
   */
  void require(String name) {
    Failures failed = failures.getIfPresent(name);
    if (failed == null) {
      return;
    }
    Duration passed = Duration.between(failed.last(), clock.instant());
    // a clock that was put back must not keep anybody out
    if (!passed.isNegative() && passed.compareTo(failed.delay()) < 0) {
      throw new Refused(Reason.TOO_MANY_TRIES, failed.delay().minus(passed));
    }
  }

  void failed(String name) {
    failures.asMap().compute(name, (key, before) -> oneMore(before));
  }

  private Failures oneMore(@Nullable Failures before) {
    return new Failures(before == null ? 1 : before.count() + 1, clock.instant());
  }

  void succeeded(String name) {
    failures.invalidate(name);
  }
}
