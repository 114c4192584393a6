package withy.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.function.Predicate;
import java.util.function.Supplier;
import withy.usecase.Refused;

/**
 * Slows down whoever guesses codes or passwords. Only failures count, by the address they come from
 * and for the server as a whole: a class that joins at once from behind one address is not held up,
 * and nobody locks a class by guessing.
 */
final class FailureLimit {
  private static final int PER_MINUTE = 10;
  private static final int PER_TEN_MINUTES = 100;
  private static final int OF_ALL_PER_TEN_MINUTES = 300;
  private static final Duration TEN_MINUTES = Duration.ofMinutes(10);
  private static final Duration PAUSE = Duration.ofMinutes(1);
  private static final int ADDRESSES = 100_000;

  private final TimeMeter time;
  private final Bucket all;
  private final Cache<String, Bucket> byAddress =
      Caffeine.newBuilder().maximumSize(ADDRESSES).expireAfterAccess(TEN_MINUTES).build();
  private volatile long pausedUntil;

  FailureLimit(TimeMeter time) {
    this.time = time;
    this.pausedUntil = time.currentTimeNanos();
    this.all =
        Bucket.builder()
            .withCustomTimePrecision(time)
            .addLimit(
                limit ->
                    limit
                        .capacity(OF_ALL_PER_TEN_MINUTES)
                        .refillGreedy(OF_ALL_PER_TEN_MINUTES, TEN_MINUTES))
            .build();
  }

  /**
   * Does what may fail because of a wrong guess.
   *
   * @throws Declined while too many guesses from this address, or in all, were wrong
   */
  <T> T guess(String address, Predicate<Refused> isWrong, Supplier<T> attempt) {
    Bucket bucket = byAddress.get(address, any -> bucket());
    requirePatience(bucket);
    try {
      return attempt.get();
    } catch (Refused refused) {
      if (isWrong.test(refused)) {
        failed(bucket);
      }
      throw refused;
    }
  }

  private void requirePatience(Bucket bucket) {
    long pause = pausedUntil - time.currentTimeNanos();
    if (pause > 0) {
      throw Declined.until(Fault.TOO_MANY_TRIES, Duration.ofNanos(pause));
    }
    var estimate = bucket.estimateAbilityToConsume(1);
    if (!estimate.canBeConsumed()) {
      Duration wait = Duration.ofNanos(estimate.getNanosToWaitForRefill());
      throw Declined.until(Fault.TOO_MANY_TRIES, wait);
    }
  }

  /** Counts a failure even beyond the limit: guesses sent at once must not go free. */
  private void failed(Bucket bucket) {
    bucket.consumeIgnoringRateLimits(1);
    all.consumeIgnoringRateLimits(1);
    if (all.getAvailableTokens() <= 0) {
      pausedUntil = time.currentTimeNanos() + PAUSE.toNanos();
    }
  }

  private Bucket bucket() {
    return Bucket.builder()
        .withCustomTimePrecision(time)
        .addLimit(
            limit -> limit.capacity(PER_MINUTE).refillGreedy(PER_MINUTE, Duration.ofMinutes(1)))
        .addLimit(
            limit -> limit.capacity(PER_TEN_MINUTES).refillGreedy(PER_TEN_MINUTES, TEN_MINUTES))
        .build();
  }
}
