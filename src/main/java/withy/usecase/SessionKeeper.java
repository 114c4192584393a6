package withy.usecase;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Opens and resumes sessions. An instructor's ends after 30 minutes without use and after 12 hours
 * in any case. A learner's ends after 180 days without use: learners come back to a drill from one
 * week to the next, on their own phones, and nothing behind a learner's session is another's.
 */
final class SessionKeeper {
  private static final Duration INSTRUCTOR_IDLE = Duration.ofMinutes(30);
  private static final Duration INSTRUCTOR_WHOLE = Duration.ofHours(12);
  private static final Duration LEARNER_IDLE = Duration.ofDays(180);
  private static final Duration LEARNER_WHOLE = Duration.ofDays(400);

  /** So seldom that resuming writes little. */
  private static final Duration USE_STEP = Duration.ofMinutes(1);

  private final Sessions sessions;
  private final Clock clock;
  private final Secrets secrets;

  SessionKeeper(Sessions sessions, Clock clock, Secrets secrets) {
    this.sessions = sessions;
    this.clock = clock;
    this.secrets = secrets;
  }

  Session open(Caller caller) {
    Instant now = Moments.now(clock);
    sessions.removeUnused(now.minus(INSTRUCTOR_IDLE), now.minus(LEARNER_IDLE));
    String token = secrets.token();
    SessionRecord opened = new SessionRecord(Secrets.digest(token), caller, now, now);
    sessions.add(opened);
    return session(token, opened);
  }

  Optional<Session> resume(String token) {
    return sessions.find(Secrets.digest(token)).flatMap(found -> resume(token, found));
  }

  private Optional<Session> resume(String token, SessionRecord found) {
    Instant now = Moments.now(clock);
    if (!now.isBefore(expiry(found))) {
      sessions.remove(found.digest());
      return Optional.empty();
    }
    if (Duration.between(found.usedAt(), now).compareTo(USE_STEP) < 0) {
      return Optional.of(session(token, found));
    }
    sessions.use(found.digest(), now);
    SessionRecord used = new SessionRecord(found.digest(), found.caller(), found.openedAt(), now);
    return Optional.of(session(token, used));
  }

  void close(String token) {
    sessions.remove(Secrets.digest(token));
  }

  private static Session session(String token, SessionRecord kept) {
    return new Session(token, Secrets.derived(token, "request"), kept.caller(), expiry(kept));
  }

  private static Instant expiry(SessionRecord kept) {
    boolean instructor = kept.caller() instanceof InstructorCaller;
    Instant idle = kept.usedAt().plus(instructor ? INSTRUCTOR_IDLE : LEARNER_IDLE);
    Instant whole = kept.openedAt().plus(instructor ? INSTRUCTOR_WHOLE : LEARNER_WHOLE);
    return idle.isBefore(whole) ? idle : whole;
  }
}
