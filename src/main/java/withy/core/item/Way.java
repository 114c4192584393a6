package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;

/**
 * How a boat sails that acts on an option.
 *
 * @param leastDepth metres of water under the surface where it is least, tide added
 * @param fault what is wrong with it if she does not touch; null where she does, and where nothing
 *     is wrong
 */
public record Way(Polyline track, double leastDepth, @Nullable Fault fault) {
  /** A way that is right if she floats, and wrong if she touches. */
  public Way(Polyline track, double leastDepth) {
    this(track, leastDepth, null);
  }
}
