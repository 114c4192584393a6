package withy.usecase;

import withy.core.item.Composition;
import withy.core.item.Item;
import withy.core.mark.Practice;

/** From where items come: the same arguments give the same item. */
@FunctionalInterface
public interface ItemSource {
  /** The item at an index of a seed, of all that a composition allows under a practice. */
  Item item(Practice practice, Composition composition, long seed, int index);
}
