package withy.core.waterway;

import withy.core.geometry.Position;

/**
 * Something that a keel may hit.
 *
 * @param at its middle
 * @param radius metres over which it makes the water shallower, above 0
 * @param leastDepth metres below chart datum over it; negative if it dries
 */
public record Danger(DangerKind kind, Position at, double radius, double leastDepth) {
  public Danger {
    if (!(radius > 0) || !Double.isFinite(leastDepth)) {
      throw new IllegalArgumentException("a " + kind.id() + " has an extent and a depth");
    }
  }
}
