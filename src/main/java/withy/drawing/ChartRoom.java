package withy.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What of a chart is taken: by signs and words, which nothing may hide, by lines, by channels. */
final class ChartRoom {
  /** Far more than any line costs. */
  private static final double HIDDEN = 80;

  private static final double STEP = 4;

  /** What one place farther off costs. */
  private static final double FARTHER = 0.4;

  private final Box area;
  private final List<Box> signs = new ArrayList<>();
  private final List<Box> lines = new ArrayList<>();
  private final List<Box> channels = new ArrayList<>();

  ChartRoom(Box area) {
    this.area = area;
  }

  /** Takes room for a sign or for words. */
  void take(Box sign) {
    signs.add(sign);
  }

  /** Takes room for a thin line; words may cross it where there is no better place. */
  void line(List<Vec> way) {
    cover(way, 2, lines);
  }

  /** Keeps the words of others out of a channel where they can; soundings stand in it. */
  void channel(List<Vec> way, double width) {
    cover(way, width, channels);
  }

  private static void cover(List<Vec> way, double width, List<Box> boxes) {
    for (int i = 1; i < way.size(); i++) {
      Vec leg = way.get(i).minus(way.get(i - 1));
      int steps = Math.max(1, (int) Math.ceil(leg.length() / Math.max(STEP, width / 2)));
      for (int step = 0; step <= steps; step++) {
        Vec at = way.get(i - 1).plus(leg.times((double) step / steps));
        boxes.add(Box.around(at, width, width));
      }
    }
  }

  boolean isFree(Box box) {
    return area.contains(box)
        && signs.stream().noneMatch(box::meets)
        && lines.stream().noneMatch(box::meets);
  }

  /** How far a box would hide something; 0 where it hides nothing. */
  double cost(Box box) {
    double cost = area.contains(box) ? 0 : HIDDEN * HIDDEN;
    for (Box each : signs) {
      cost += box.meets(each) ? HIDDEN * (1 + box.common(each)) : 0;
    }
    for (Box each : lines) {
      cost += box.common(each);
    }
    for (Box each : channels) {
      cost += box.common(each) / Math.max(1, each.width());
    }
    return cost;
  }

  /** Takes the cheapest of some places, with clear room round it. */
  Box taken(List<Box> places, double clear) {
    Box box = best(places);
    take(box.grown(clear));
    return box;
  }

  /** The cheapest of some places, of which the later ones lie farther off. */
  Box best(List<Box> places) {
    return IntStream.range(0, places.size())
        .boxed()
        .min(Comparator.comparingDouble(i -> cost(places.get(i)) + FARTHER * i))
        .map(places::get)
        .orElseThrow();
  }
}
