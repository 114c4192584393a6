package withy.core.mark;

import java.util.Optional;
import withy.core.geometry.Bearing;

/** Where a cardinal mark has its safe water, and on which hand it is then left. */
public final class CardinalRules {
  /** Nearer than this to dead ahead or astern, in degrees, a mark has no hand; ours, no source. */
  public static final double NO_HAND_WITHIN = 20;

  private CardinalRules() {}

  /**
   * The quadrant in which to pass.
   *
   * @throws IllegalStateException if the mark is not cardinal
   */
  public static Quadrant pass(MarkKind kind) {
    return kind.quadrant();
  }

  /** Whether a place that bears so from the mark lies in its safe quadrant. */
  public static boolean isSafe(Quadrant safe, Bearing fromMark) {
    return Quadrant.of(fromMark) == safe;
  }

  /**
   * The hand on which a boat in the middle of the safe quadrant leaves the mark; empty where the
   * mark then bears less than {@link #NO_HAND_WITHIN} from dead ahead or astern.
   */
  public static Optional<Side> hand(Quadrant safe, Bearing heading) {
    double relative = safe.opposite().middle().relativeTo(heading);
    double offBow = StrictMath.abs(relative);
    if (offBow < NO_HAND_WITHIN || offBow > 180 - NO_HAND_WITHIN) {
      return Optional.empty();
    }
    return Optional.of(relative > 0 ? Side.LEAVE_TO_STARBOARD : Side.LEAVE_TO_PORT);
  }
}
