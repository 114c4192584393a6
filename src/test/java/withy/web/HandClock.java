package withy.web;

import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;

/** Time that passes when the test says so. */
public final class HandClock implements TimeMeter {
  private final AtomicLong nanos = new AtomicLong(1_000_000_000L);

  /** Limits that go by this time. */
  public Limits limits() {
    return new Limits(this);
  }

  public void pass(Duration time) {
    nanos.addAndGet(time.toNanos());
  }

  @Override
  public long currentTimeNanos() {
    return nanos.get();
  }

  @Override
  public boolean isWallClockBased() {
    return false;
  }
}
