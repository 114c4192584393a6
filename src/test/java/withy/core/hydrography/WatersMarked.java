package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import withy.core.light.LightCharacter;
import withy.core.mark.NumberRules;
import withy.core.mark.Parity;
import withy.core.mark.Practice;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** Holds the marks of a water against what an authority would do. */
final class WatersMarked {
  private static final double APART = 120;

  /** A rounding of two places to decimetres. */
  private static final double ROUNDED = 0.2;

  private final Practice practice;
  private final Waterway water;
  private final List<String> faults = new ArrayList<>();

  private WatersMarked(Practice practice, Waterway water) {
    this.practice = practice;
    this.water = water;
  }

  /** What an authority would not do; nothing where all is well. */
  static List<String> faults(Practice practice, Waterway water) {
    WatersMarked marked = new WatersMarked(practice, water);
    for (PlacedMark each : water.marks()) {
      marked.apart(each);
      marked.light(each);
    }
    marked.numbers();
    return marked.faults;
  }

  private List<PlacedMark> nearest(PlacedMark mark) {
    return water.marks().stream()
        .filter(each -> !each.equals(mark))
        .sorted(Comparator.comparingDouble(each -> away(each, mark)))
        .toList();
  }

  private static double away(PlacedMark one, PlacedMark other) {
    return one.position().distanceTo(other.position());
  }

  private void apart(PlacedMark mark) {
    List<PlacedMark> near = nearest(mark);
    if (!near.isEmpty() && away(near.get(0), mark) < APART - ROUNDED) {
      faults.add(mark.kind().id() + " " + mark.label() + " stands " + away(near.get(0), mark));
    }
    if (!water.depths().contains(mark.position())) {
      faults.add(mark.kind().id() + " stands off the chart");
    }
  }

  /** Neither of the two nearest marks shows the same character, whatever its colour. */
  private void light(PlacedMark mark) {
    LightCharacter light = mark.appearance().light();
    List<PlacedMark> near = nearest(mark);
    for (PlacedMark each : near.subList(0, Math.min(2, near.size()))) {
      LightCharacter other = each.appearance().light();
      boolean pair = mark.kind().isLeading() && each.kind().isLeading();
      if (light != null && other != null && !pair && MarkLights.isLike(light, other)) {
        faults.add(mark.label() + " and " + each.label() + " show " + light.shortNotation());
      }
    }
  }

  /** Growing with the conventional direction on either hand, red even, green odd, none twice. */
  private void numbers() {
    Set<String> all = new LinkedHashSet<>();
    for (Fairway fairway : water.fairways()) {
      int[] last = {-1, -1};
      for (PlacedMark each : along(water, fairway)) {
        Optional<Parity> parity = NumberRules.parity(practice.region(), each.kind());
        if (each.label() == null || parity.isEmpty()) {
          continue;
        }
        int number = Integer.parseInt(each.label());
        if (Parity.of(number) != parity.get()
            || number <= last[number % 2]
            || !all.add(each.label())) {
          faults.add("number " + number + " on a " + each.kind().id());
        }
        last[number % 2] = number;
      }
    }
  }

  /** Marks of a fairway in the order in which a boat that comes from the sea meets them. */
  private static List<PlacedMark> along(Waterway water, Fairway fairway) {
    return water.marks().stream()
        .filter(each -> fairway.id().equals(each.serves()))
        .sorted(Comparator.comparingDouble(each -> fairway.line().foot(each.position()).along()))
        .toList();
  }
}
