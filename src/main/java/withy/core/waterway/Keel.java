package withy.core.waterway;

/**
 * How much water a boat needs.
 *
 * @param draught metres from the surface to the lowest point, above 0
 * @param margin metres that she wants under it, 0 or more
 */
public record Keel(double draught, double margin) {
  /** That of a small cruising boat; ours, no source. */
  public static final Keel CRUISER = new Keel(1.4, 0.5);

  private static final double DECIMETRE = 0.1;

  public Keel {
    if (!(draught > 0) || !(margin >= 0)) {
      throw new IllegalArgumentException(draught + " m and " + margin + " m are no keel");
    }
  }

  /** Whether a depth of water, tide added, is enough and leaves the margin. */
  public boolean isSafe(double water) {
    return water >= draught + margin;
  }

  /** Whether she touches by a decimetre or more, as charts give depths. */
  public boolean groundsSurely(double water) {
    return grounds(water + DECIMETRE);
  }

  /** Whether she touches in a depth of water, tide added. */
  public boolean grounds(double water) {
    return water < draught;
  }
}
