package withy.usecase;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that shows past days. */
final class DemoClock extends Clock {
  private Instant now;

  DemoClock(Instant now) {
    this.now = now;
  }

  void set(Instant moment) {
    now = moment;
  }

  void pass(Duration time) {
    now = now.plus(time);
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("moments have no zone");
  }
}
