package withy.usecase;

import java.util.List;
import java.util.stream.IntStream;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/** Shows an instructor what a drill would ask. */
public final class ComposeDrill {
  /**
   * Items that the composition may draw, with their keys.
   *
   * @throws Refused NOTHING_TO_DRILL
   */
  public List<Item> sample(Practice practice, Composition composition, long seed, int count) {
    requireItems(practice, composition);
    return IntStream.range(0, count)
        .mapToObj(index -> ItemGenerator.item(practice, composition, seed, index))
        .toList();
  }

  /** The concepts that the composition can measure, in syllabus order; empty if it has nothing. */
  public List<Concept> measurable(Practice practice, Composition composition) {
    return ItemGenerator.measurable(practice, composition);
  }

  static void requireItems(Practice practice, Composition composition) {
    if (ItemGenerator.measurable(practice, composition).isEmpty()) {
      throw new Refused(Reason.NOTHING_TO_DRILL);
    }
  }
}
