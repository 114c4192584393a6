package withy.core.hydrography;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import withy.core.mark.NumberRules;
import withy.core.mark.Parity;
import withy.core.mark.Region;
import withy.core.waterway.Fairway;
import withy.core.waterway.Waterway;

/**
 * Numbers the lateral marks of fairways: growing in the conventional direction, red even and green
 * odd, left out on one hand where they would fall behind the other. Each further fairway begins at
 * a ten of its own, so that no number stands twice in a water.
 */
final class MarkNumbers {
  private static final int TEN = 10;

  private final Region region;
  private final List<Planned> marks;
  private final List<@Nullable String> labels;

  private MarkNumbers(Region region, List<Planned> marks) {
    this.region = region;
    this.marks = marks;
    this.labels = new ArrayList<>(Collections.nCopies(marks.size(), null));
  }

  /** A number or none for each of some marks. */
  static List<@Nullable String> of(Region region, List<Planned> marks, Waterway water) {
    MarkNumbers numbers = new MarkNumbers(region, marks);
    int begun = 0;
    for (Fairway each : water.fairways()) {
      int last = numbers.number(each, begun);
      begun = (last / TEN + 1) * TEN;
    }
    return numbers.labels;
  }

  /** Numbers one fairway and tells the highest number. */
  private int number(Fairway fairway, int begun) {
    List<Integer> order =
        IntStream.range(0, marks.size())
            .filter(i -> fairway.id().equals(marks.get(i).serves()))
            .boxed()
            .sorted(
                Comparator.comparingDouble(i -> fairway.line().foot(marks.get(i).place()).along()))
            .toList();
    int odd = begun - 1;
    int even = begun;
    for (int each : order) {
      Optional<Parity> parity = NumberRules.parity(region, marks.get(each).mark().kind());
      if (parity.isPresent()) {
        boolean isOdd = parity.get() == Parity.of(1);
        odd = isOdd ? Math.max(odd + 2, even - 1) : odd;
        even = isOdd ? even : Math.max(even + 2, odd - 1);
        labels.set(each, Integer.toString(isOdd ? odd : even));
      }
    }
    return Math.max(odd, even);
  }
}
