package withy.core.mark;

import java.util.Optional;
import withy.core.Term;

/**
 * How the boat's heading lies to the conventional direction of buoyage; none where it does not
 * matter.
 */
public enum Travel implements Term {
  WITH,
  AGAINST,
  NONE;

  /** What becomes of a side that is told for travelling with the buoyage; empty for none. */
  Optional<Side> apply(Side withBuoyage) {
    return switch (this) {
      case WITH -> Optional.of(withBuoyage);
      case AGAINST -> Optional.of(withBuoyage.opposite());
      case NONE -> Optional.empty();
    };
  }
}
