package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells the rhythm from a timeline; the rules of thumb are at {@link Rhythm#classify}. */
final class Classifier {

  private static final int LONG_FLASH = 2000;
  private static final int NINE = 9;

  private Classifier() {}

  static Optional<Rhythm> classify(LightTimeline timeline) {
    if (timeline.fixed()) {
      return timeline.phases().get(0).dark() ? Optional.empty() : found(LightClass.FIXED);
    }
    if (timeline.phases().stream().anyMatch(Phase::high)) {
      return fixedAndFlashing(timeline);
    }
    boolean dark = timeline.phases().stream().anyMatch(Phase::dark);
    if (!dark) {
      return found(LightClass.ALTERNATING);
    }
    List<Beat> beats = Beat.of(timeline);
    if (beats.isEmpty()) {
      return Optional.empty();
    }
    long colours =
        timeline.phases().stream()
            .filter(phase -> !phase.dark())
            .map(Phase::colour)
            .distinct()
            .count();
    return colours > 1 ? alternating(beats, colours) : oneColour(shortestRepeat(beats));
  }

  private static Optional<Rhythm> found(LightClass lightClass) {
    return Optional.of(Rhythm.of(lightClass, List.of()));
  }

  private static Optional<Rhythm> found(LightClass lightClass, List<Integer> group) {
    try {
      return Optional.of(Rhythm.of(lightClass, group));
    } catch (LightNotationException notARhythm) {
      return Optional.empty();
    }
  }

  private static Optional<Rhythm> fixedAndFlashing(LightTimeline timeline) {
    int flashes = timeline.flashes();
    return found(LightClass.FIXED_AND_FLASHING, flashes > 1 ? List.of(flashes) : List.of());
  }

  private static Optional<Rhythm> alternating(List<Beat> beats, long colours) {
    int light = Beat.sum(beats, Beat::light);
    int dark = Beat.sum(beats, Beat::dark);
    if (light > dark) {
      List<Integer> group = beats.size() == colours ? List.of() : List.of(beats.size());
      return found(LightClass.ALTERNATING_OCCULTING, group);
    }
    List<Integer> groups = Grouping.groups(beats, Beat::dark);
    return found(LightClass.ALTERNATING_FLASHING, groups);
  }

  /** A period that is written several times over is taken once. */
  private static List<Beat> shortestRepeat(List<Beat> beats) {
    for (int size = 1; size < beats.size(); size++) {
      List<Beat> start = beats.subList(0, size);
      List<Beat> repeated = new ArrayList<>();
      while (beats.size() % size == 0 && repeated.size() < beats.size()) {
        repeated.addAll(start);
      }
      if (repeated.equals(beats)) {
        return start;
      }
    }
    return beats;
  }

  private static Optional<Rhythm> oneColour(List<Beat> beats) {
    if (beats.size() == 1) {
      return found(single(beats.get(0)));
    }
    boolean lightsAlike =
        alike(Beat.shortest(beats, Beat::light), Beat.longest(beats, Beat::light));
    if (lightsAlike) {
      return flashing(beats);
    }
    if (alike(Beat.shortest(beats, Beat::dark), Beat.longest(beats, Beat::dark))) {
      List<Integer> groups = Grouping.groups(beats, Beat::light);
      return found(LightClass.OCCULTING.withGroup(groups), groups);
    }
    return dotsAndDashes(beats);
  }

  private static boolean alike(int shortest, int longest) {
    return !Grouping.clearlyLonger(longest, shortest);
  }

  private static LightClass single(Beat beat) {
    if (Math.abs(beat.light() - beat.dark()) <= 1) {
      return LightClass.ISOPHASE;
    }
    if (beat.light() > beat.dark()) {
      return LightClass.OCCULTING;
    }
    if (beat.light() >= LONG_FLASH) {
      return LightClass.LONG_FLASHING;
    }
    return switch (LightClass.Rate.of(1, beat.cycle())) {
      case QUICK -> LightClass.QUICK;
      case VERY_QUICK -> LightClass.VERY_QUICK;
      case ULTRA_QUICK -> LightClass.ULTRA_QUICK;
      default -> LightClass.FLASHING;
    };
  }

  private static Optional<Rhythm> flashing(List<Beat> beats) {
    List<Integer> groups = Grouping.groups(beats, Beat::dark);
    if (Beat.shortest(beats, Beat::light) >= LONG_FLASH) {
      return found(LightClass.LONG_FLASHING.withGroup(groups), groups);
    }
    return groups.size() == 1
        ? oneGroup(Beat.longestDarkLast(beats), groups)
        : found(LightClass.FLASHING.withGroup(groups), groups);
  }

  private static Optional<Rhythm> oneGroup(List<Beat> beats, List<Integer> groups) {
    Beat first = beats.get(0);
    int sequence = Beat.sum(beats.subList(0, beats.size() - 1), Beat::cycle);
    LightClass.Rate rate = LightClass.Rate.of(beats.size() - 1, sequence);
    boolean cut = beats.size() != NINE && beats.size() > 3;
    boolean interrupted = cut && 2L * first.cycle() * beats.size() >= Beat.sum(beats, Beat::cycle);
    return switch (rate) {
      case ULTRA_QUICK -> found(LightClass.INTERRUPTED_ULTRA_QUICK);
      case VERY_QUICK ->
          interrupted
              ? found(LightClass.INTERRUPTED_VERY_QUICK)
              : found(LightClass.GROUP_VERY_QUICK, groups);
      case QUICK -> quick(first, interrupted, groups);
      default -> found(LightClass.GROUP_FLASHING, groups);
    };
  }

  /**
   * At the rate of quick flashes, a flash that fills more than a third of its time is not quick.
   */
  private static Optional<Rhythm> quick(Beat first, boolean interrupted, List<Integer> groups) {
    if (3 * first.light() > first.cycle()) {
      return found(LightClass.GROUP_FLASHING, groups);
    }
    return interrupted
        ? found(LightClass.INTERRUPTED_QUICK)
        : found(LightClass.GROUP_QUICK, groups);
  }

  /** No letter has five dots: five short flashes and more before a long one are quick ones. */
  private static Optional<Rhythm> dotsAndDashes(List<Beat> beats) {
    List<Beat> turned = Beat.longestDarkLast(beats);
    List<Beat> before = turned.subList(0, turned.size() - 1);
    boolean quick =
        before.size() >= 5
            && alike(Beat.shortest(before, Beat::light), Beat.longest(before, Beat::light));
    if (quick && turned.get(turned.size() - 1).light() >= LONG_FLASH) {
      LightClass.Rate rate = LightClass.Rate.of(before.size(), Beat.sum(before, Beat::cycle));
      return found(
          rate == LightClass.Rate.QUICK
              ? LightClass.GROUP_QUICK_AND_LONG_FLASH
              : LightClass.GROUP_VERY_QUICK_AND_LONG_FLASH,
          List.of(before.size()));
    }
    String letters = Grouping.letters(beats);
    return letters.isEmpty() ? Optional.empty() : Optional.of(Rhythm.ofMorse(letters));
  }
}
