package withy.core.light;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a light shows in one period, phase after phase, repeated without end.
 *
 * @param phases at least one; a fixed light has a single phase, whose length says nothing
 * @param assumed true where the character left open a length or the period, and a default of this
 *     project stands in
 */
public record LightTimeline(List<Phase> phases, boolean assumed) {

  private static final int SECOND = 1000;

  public LightTimeline {
    phases = List.copyOf(phases);
    if (phases.isEmpty()) {
      throw new IllegalArgumentException("a timeline has at least one phase");
    }
  }

  /** The time after which everything repeats; empty for a light that never changes. */
  public OptionalInt periodMillis() {
    return fixed() ? OptionalInt.empty() : OptionalInt.of(sum());
  }

  /** Whether the light shows the same all the time. */
  public boolean fixed() {
    return phases.stream().allMatch(phases.get(0)::shows);
  }

  /**
   * Appearances of light in one period: flashes, the lights between eclipses, the colours of an
   * alternating light, the bright flashes of a fixed and flashing one. None for a fixed light.
   */
  public int flashes() {
    return onsets().size();
  }

  /** What is shown at a time after the start of a period; any time, also beyond one period. */
  public Phase at(long millis) {
    long left = Math.floorMod(millis, (long) sum());
    for (Phase phase : phases) {
      left -= phase.millis();
      if (left < 0) {
        return phase;
      }
    }
    throw new AssertionError("a time within the period lies in one of its phases");
  }

  /**
   * The same timeline with every phase drawn out, so that the eye can follow it.
   *
   * @param times how many times longer each phase lasts, 1 or more
   */
  public LightTimeline slower(int times) {
    List<Phase> drawnOut = new ArrayList<>();
    for (Phase phase : phases) {
      drawnOut.add(phase.lasting(Math.multiplyExact(phase.millis(), times)));
    }
    return new LightTimeline(drawnOut, assumed);
  }

  /**
   * The same timeline with neighbours that show the same made one, also across the end of the
   * period; then it begins where the first change is.
   */
  public LightTimeline merged() {
    List<Phase> merged = new ArrayList<>();
    for (Phase phase : phases) {
      append(merged, phase);
    }
    if (merged.size() > 1 && merged.get(0).shows(merged.get(merged.size() - 1))) {
      append(merged, merged.remove(0));
    }
    return new LightTimeline(merged, assumed);
  }

  private static void append(List<Phase> phases, Phase phase) {
    int last = phases.size() - 1;
    if (last >= 0 && phases.get(last).shows(phase)) {
      phases.set(last, phase.lasting(phases.get(last).millis() + phase.millis()));
    } else {
      phases.add(phase);
    }
  }

  /**
   * Whether two timelines look the same to someone who watches long enough: they may begin at
   * different phases, as light lists do.
   */
  public boolean sameRhythmAs(LightTimeline other) {
    if (fixed() || other.fixed()) {
      return fixed() && other.fixed() && phases.get(0).shows(other.phases.get(0));
    }
    List<Phase> mine = new ArrayList<>(merged().phases);
    List<Phase> theirs = other.merged().phases;
    for (int turn = 0; turn < mine.size(); turn++) {
      if (mine.equals(theirs)) {
        return true;
      }
      Collections.rotate(mine, 1);
    }
    return false;
  }

  /** The most flashes that begin within any one second, wherever that second starts. */
  public int mostFlashesInOneSecond() {
    List<Integer> onsets = onsets();
    int most = 0;
    for (int from : onsets) {
      int count = 0;
      for (int onset : onsets) {
        count += timesWithinSecond(Math.floorMod(onset - from, sum()));
      }
      most = Math.max(most, count);
    }
    return most;
  }

  /** How often something at this time in the period comes within the first second, repeated. */
  private int timesWithinSecond(int time) {
    return time >= SECOND ? 0 : (SECOND - 1 - time) / sum() + 1;
  }

  /** The times within the period at which a flash begins. */
  private List<Integer> onsets() {
    List<Integer> onsets = new ArrayList<>();
    boolean brighter = phases.stream().anyMatch(Phase::high);
    Phase before = phases.get(phases.size() - 1);
    int time = 0;
    for (Phase phase : phases) {
      if (!phase.shows(before) && (brighter ? phase.high() : !phase.dark())) {
        onsets.add(time);
      }
      time += phase.millis();
      before = phase;
    }
    return onsets;
  }

  private int sum() {
    return phases.stream().mapToInt(Phase::millis).sum();
  }
}
