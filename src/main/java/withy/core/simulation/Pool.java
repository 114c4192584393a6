package withy.core.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import withy.core.Chance;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.response.OfferedOption;

/**
 * Items on one concept out of the generator, and the two beliefs that are planted there: those that
 * lead to a wrong option, to which no other belief leads, in most of the items. Beliefs that always
 * come to the same answer cannot be told apart by any statistics.
 *
 * @param beliefs all that lead to an option of any of the items, by name
 * @param planted one or two of them; none where no belief is about the concept
 */
record Pool(Concept concept, List<Posed> items, List<String> beliefs, List<String> planted) {
  private static final int PLANTED = 2;

  Pool {
    items = List.copyOf(items);
    beliefs = List.copyOf(beliefs);
    planted = List.copyOf(planted);
  }

  /** As many items with a choice as wanted. */
  static Pool of(Practice practice, Concept concept, int count, long seed) {
    Composition composition = new Composition(List.of(concept), List.of(), null, 1);
    List<Posed> items = new ArrayList<>();
    for (int index = 0; items.size() < count; index++) {
      Item item = ItemGenerator.item(practice, composition, seed, index);
      if (!item.options().isEmpty()) {
        items.add(Posed.of(item));
      }
    }
    return new Pool(concept, items, beliefs(items), planted(items));
  }

  private static List<String> beliefs(List<Posed> items) {
    SortedSet<String> names = new TreeSet<>();
    for (Posed each : items) {
      for (OfferedOption option : each.offered()) {
        if (option.belief() != null) {
          names.add(option.belief());
        }
        names.addAll(option.also());
      }
    }
    return List.copyOf(names);
  }

  private static List<String> planted(List<Posed> items) {
    SortedMap<String, Integer> alone = new TreeMap<>();
    for (Posed each : items) {
      each.wrong().forEach((belief, only) -> alone.merge(belief, only ? 1 : 0, Integer::sum));
    }
    return alone.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .limit(PLANTED)
        .map(Map.Entry::getKey)
        .toList();
  }

  Posed any(Chance chance) {
    return chance.pick(items);
  }
}
