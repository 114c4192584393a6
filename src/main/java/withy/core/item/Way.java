package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/**
 * How a boat sails that acts on an option.
 *
 * @param leastDepth metres of water under the surface where it is least, tide added
 * @param fault what is wrong with it if she does not touch; null where she does, and where nothing
 *     is wrong
 */
public record Way(Polyline track, double leastDepth, @Nullable Fault fault) {
  /** What becomes of a keel on a track. */
  static Way sailed(Waterway water, Keel keel, Polyline track) {
    return new Way(track, water.sail(track, keel).leastDepth());
  }

  /** The same with what is wrong with it though she does not touch; null for nothing. */
  Way with(@Nullable Fault other) {
    return new Way(track, leastDepth, other);
  }

  /** A way that is right if she floats, and wrong if she touches. */
  public Way(Polyline track, double leastDepth) {
    this(track, leastDepth, null);
  }
}
