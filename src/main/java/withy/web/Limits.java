package withy.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.function.Supplier;
import withy.usecase.Reason;
import withy.usecase.Refused;

/** How often what may be done; pages and scripts draw on the same measure. */
public final class Limits {
  private static final int RESPONSES_A_SECOND = 10;
  private static final int RESPONSES_AT_ONCE = 20;
  private static final int LEARNERS = 100_000;

  private final TimeMeter time;
  private final FailureLimit joins;
  private final FailureLimit signIns;
  private final Cache<String, Bucket> responses =
      Caffeine.newBuilder().maximumSize(LEARNERS).expireAfterAccess(Duration.ofMinutes(1)).build();

  Limits(TimeMeter time) {
    this.time = time;
    this.joins = new FailureLimit(time);
    this.signIns = new FailureLimit(time);
  }

  /** Limits by the machine's own measure of time, which no change of the clock moves. */
  public static Limits onSystemTime() {
    return new Limits(TimeMeter.SYSTEM_NANOTIME);
  }

  /**
   * Tries a join code or a return code.
   *
   * @throws Declined when too many were wrong
   */
  public <T> T join(Visit visit, Supplier<T> attempt) {
    return joins.guess(visit.address(), Limits::isWrongCode, attempt);
  }

  /**
   * Tries a password, a set-up code or an invitation.
   *
   * @throws Declined when too many were wrong
   */
  public <T> T signIn(Visit visit, Supplier<T> attempt) {
    return signIns.guess(visit.address(), Limits::isWrongSignIn, attempt);
  }

  /**
   * Counts one response of a learner.
   *
   * @throws Declined when they come faster than a person answers
   */
  public void response(String learner) {
    ConsumptionProbe probe =
        responses.get(learner, any -> bucket()).tryConsumeAndReturnRemaining(1);
    if (!probe.isConsumed()) {
      Duration wait = Duration.ofNanos(probe.getNanosToWaitForRefill());
      throw Declined.until(Fault.TOO_MANY_RESPONSES, wait);
    }
  }

  private Bucket bucket() {
    return Bucket.builder()
        .withCustomTimePrecision(time)
        .addLimit(
            limit ->
                limit
                    .capacity(RESPONSES_AT_ONCE)
                    .refillGreedy(RESPONSES_A_SECOND, Duration.ofSeconds(1)))
        .build();
  }

  private static boolean isWrongCode(Refused refused) {
    return refused.reason() == Reason.UNKNOWN_CODE;
  }

  private static boolean isWrongSignIn(Refused refused) {
    return switch (refused.reason()) {
      case WRONG_SIGN_IN, WRONG_SET_UP_CODE, WRONG_INVITATION -> true;
      default -> false;
    };
  }
}
