package withy.core.light;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * A light and the eclipse that follows it, both in milliseconds; of a fixed and flashing light, the
 * bright flash and the steady light that follows it.
 */
record Beat(int light, int dark) {

  /** From the start of one light to the start of the next. */
  int cycle() {
    return light + dark;
  }

  /**
   * The beats of one period from its first light on; empty for a timeline in which light and
   * eclipse do not take turns.
   */
  static List<Beat> of(LightTimeline timeline) {
    List<Phase> phases = new ArrayList<>(timeline.merged().phases());
    boolean brighter = phases.stream().anyMatch(Phase::high);
    if (!lit(phases.get(0), brighter)) {
      Collections.rotate(phases, -1);
    }
    List<Beat> beats = new ArrayList<>();
    for (int i = 0; i + 1 < phases.size(); i += 2) {
      if (!lit(phases.get(i), brighter) || lit(phases.get(i + 1), brighter)) {
        return List.of();
      }
      beats.add(new Beat(phases.get(i).millis(), phases.get(i + 1).millis()));
    }
    return phases.size() % 2 == 0 ? beats : List.of();
  }

  private static boolean lit(Phase phase, boolean brighter) {
    return brighter ? phase.high() : !phase.dark();
  }

  static int sum(List<Beat> beats, ToIntFunction<Beat> part) {
    return beats.stream().mapToInt(part).sum();
  }

  static int longest(List<Beat> beats, ToIntFunction<Beat> part) {
    return beats.stream().mapToInt(part).max().orElse(0);
  }

  static int shortest(List<Beat> beats, ToIntFunction<Beat> part) {
    return beats.stream().mapToInt(part).min().orElse(0);
  }

  /** The same beats, the one with the longest eclipse last. */
  static List<Beat> longestDarkLast(List<Beat> beats) {
    return longestLast(beats, Beat::dark);
  }

  /** The same beats, the one that is longest in some part last. */
  static List<Beat> longestLast(List<Beat> beats, ToIntFunction<Beat> part) {
    List<Beat> turned = new ArrayList<>(beats);
    int longest = longest(beats, part);
    for (int turn = 0; turn < turned.size(); turn++) {
      if (part.applyAsInt(turned.get(turned.size() - 1)) == longest) {
        break;
      }
      Collections.rotate(turned, 1);
    }
    return turned;
  }
}
