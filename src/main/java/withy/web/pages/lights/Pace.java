package withy.web.pages.lights;

import withy.core.Term;
import withy.core.light.LightTimeline;

/** How fast lights are shown. */
enum Pace implements Term {
  TRUE(1),
  HALF(2),
  QUARTER(4),
  /** Only the strips. */
  STILL(1);

  private final int times;

  Pace(int times) {
    this.times = times;
  }

  /** The pace that a word stands for; the true one for any other word. */
  static Pace read(String word) {
    for (Pace each : values()) {
      if (each.id().equals(word)) {
        return each;
      }
    }
    return TRUE;
  }

  /** As it is written in an address: the true pace goes without saying. */
  String word() {
    return this == TRUE ? "" : id();
  }

  boolean isStill() {
    return this == STILL;
  }

  LightTimeline of(LightTimeline timeline) {
    return times == 1 ? timeline : timeline.slower(times);
  }
}
