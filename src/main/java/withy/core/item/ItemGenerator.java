package withy.core.item;

import java.util.List;
import withy.core.mark.Practice;

/** Draws items from a seed: the same arguments give the same item on any machine. */
public final class ItemGenerator {
  private ItemGenerator() {}

  /** Changes whenever the item drawn from some seed changes. */
  public static final int VERSION = 1;

  /**
   * The item at an index of a seed, drawn from all that a composition allows under a practice.
   *
   * @throws IllegalArgumentException if the composition allows nothing under the practice
   */
  public static Item item(Practice practice, Composition composition, long seed, int index) {
    throw new UnsupportedOperationException();
  }

  /**
   * The concepts that items of this composition can measure under a practice, in syllabus order;
   * empty if it allows nothing.
   */
  public static List<Concept> measurable(Practice practice, Composition composition) {
    throw new UnsupportedOperationException();
  }
}
