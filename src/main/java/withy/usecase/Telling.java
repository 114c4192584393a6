package withy.usecase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import withy.core.item.Item;

/**
 * An item that shows what a belief leads to.
 *
 * @param id of the item as the latest learner had it
 * @param learners whom the belief led astray in it
 */
public record Telling(String id, Item item, int learners) {
  /**
   * One that was found among answers, not yet drawn.
   *
   * @param item by id
   */
  record Found(String item, String form, String key, int learners) {
    /** Two items of one form with one right answer look alike. */
    private String situation() {
      return form + " " + key;
    }
  }

  private record Drawn(long seed, int index) {}

  /**
   * Items by answers that a belief led to: first one of each situation, those first that led most
   * learners astray, then the others in the same order.
   *
   * @param latest the newest first
   */
  static List<Found> ranked(List<Evidence.Led> latest) {
    Map<Drawn, List<Evidence.Led>> items = new LinkedHashMap<>();
    for (Evidence.Led each : latest) {
      Drawn drawn = new Drawn(each.seed(), each.index());
      items.computeIfAbsent(drawn, one -> new ArrayList<>()).add(each);
    }
    List<Found> found = new ArrayList<>(items.values().stream().map(Telling::found).toList());
    found.sort(Comparator.comparingInt(Found::learners).reversed());
    return differentFirst(found);
  }

  private static Found found(List<Evidence.Led> same) {
    Evidence.Led latest = same.get(0);
    int learners = (int) same.stream().map(Evidence.Led::learner).distinct().count();
    return new Found(latest.item(), latest.form(), latest.key(), learners);
  }

  private static List<Found> differentFirst(List<Found> found) {
    Set<String> seen = new LinkedHashSet<>();
    List<Found> first = new ArrayList<>();
    List<Found> others = new ArrayList<>();
    for (Found each : found) {
      (seen.add(each.situation()) ? first : others).add(each);
    }
    first.addAll(others);
    return first;
  }
}
