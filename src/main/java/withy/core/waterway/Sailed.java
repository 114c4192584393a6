package withy.core.waterway;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;

/**
 * What a boat meets along a track.
 *
 * @param leastDepth the least depth of water under the surface, tide added, in metres
 * @param where it is met
 * @param touched where the keel first meets the ground; null where it never does
 */
public record Sailed(double leastDepth, Position where, @Nullable Position touched) {
  /** Where the keel first meets the ground. */
  public Optional<Position> ground() {
    return Optional.ofNullable(touched);
  }
}
