package withy.core.item;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

/**
 * Items of one difficulty. Writers are not asked to write hard items: an item is drawn as always,
 * and drawn again until it is as hard as asked for, so that it is one that might have been drawn
 * anyway.
 *
 * @param time at which the items are
 * @param water in which they lie; null where waters are drawn
 */
record Graded(
    Practice practice,
    Concept concept,
    ItemWriter writer,
    TimeOfDay time,
    @Nullable SurveyedWater water,
    Difficulty difficulty) {
  /** Items that are looked at to tell whether there are such ones; ours, no source. */
  private static final int LOOKED_AT = 24;

  /** Draws after which the first of those that were looked at serves; ours, no source. */
  private static final int MOST_DRAWS = 60;

  private static final int KEPT = 1000;

  /** What was found out of late; it would come out the same again, after some time. */
  private static final Map<Graded, Optional<Integer>> FIRST =
      Collections.synchronizedMap(
          new LinkedHashMap<>() {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Graded, Optional<Integer>> eldest) {
              return size() > KEPT;
            }
          });

  /** Whether one of the first items is as hard; where it is rarer, there is nothing to drill. */
  boolean exists() {
    return first().isPresent();
  }

  /** The index of the first of them. */
  private Optional<Integer> first() {
    Optional<Integer> known = FIRST.get(this);
    if (known != null) {
      return known;
    }
    Optional<Integer> found = search();
    FIRST.put(this, found);
    return found;
  }

  private Optional<Integer> search() {
    for (int index = 0; index < LOOKED_AT; index++) {
      if (Difficulty.of(drawn(index, Chance.of(0, index), 0, index)) == difficulty) {
        return Optional.of(index);
      }
    }
    return Optional.empty();
  }

  /**
   * An item for a place in a row. Each draw takes the next place, since some forms take turns by
   * it.
   *
   * @throws java.util.NoSuchElementException if there are none as hard
   */
  Item item(Chance chance, long seed, int index) {
    for (int i = 0; i < MOST_DRAWS; i++) {
      Item item = drawn(index + i, chance, seed, index);
      if (Difficulty.of(item) == difficulty) {
        return item;
      }
    }
    int known = first().orElseThrow();
    return drawn(known, Chance.of(0, known), seed, index);
  }

  private Item drawn(int place, Chance chance, long seed, int index) {
    Task task = new Task(practice, concept, time, place, chance, water);
    return writer.write(task).item(task, seed, index);
  }
}
