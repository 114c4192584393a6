package withy.usecase;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Moments as they are kept, whole milliseconds: what is read back equals what was stored. */
final class Moments {
  private Moments() {}

  static Instant now(Clock clock) {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
