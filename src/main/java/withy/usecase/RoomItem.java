package withy.usecase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/**
 * Which item all learners of an assignment get alike.
 *
 * @param practice by which it asks, which need not be that of the class
 * @param drawn the name of the drawn water in which it lies; null where the composition of the
 *     assignment says in which, or the item draws its own
 * @param seed with the index, all that it is drawn from
 * @param generatorVersion that drew it; another one may draw another item from the seed
 * @param revealedAt when the class was shown the answer; null before
 */
public record RoomItem(
    Practice practice,
    @Nullable String drawn,
    long seed,
    int index,
    int generatorVersion,
    @Nullable Instant revealedAt) {
  /** Whether the generator still draws the item that was put to the room. */
  boolean isCurrent() {
    return generatorVersion == ItemGenerator.VERSION;
  }
}
