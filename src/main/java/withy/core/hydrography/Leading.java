package withy.core.hydrography;

import java.util.Optional;
import withy.core.geometry.Position;
import withy.core.waterway.LeadingLine;

/** Looks for the ground on which two leading marks can stand. */
final class Leading {
  /** Metres below datum of ground that no spring tide covers. */
  private static final double DRY = -2.8;

  private static final double STEP = 10;

  /** Metres that a mark stands inside the edge of the dry ground. */
  private static final double INSIDE = 15;

  private static final double NEAREST = 220;
  private static final double FARTHEST = 360;

  private Leading() {}

  /**
   * The marks on the prolongation of a reach along the middle of the frame; empty where no two dry
   * places lie so far apart within the chart.
   */
  static Optional<LeadingLine> ashore(Seabed seabed, Frame frame, Position from, Position until) {
    double farthest = Seabed.SIDE / 2 - 70;
    double front = dry(seabed, frame, frame.inland(until) + 100, farthest);
    double rear = dry(seabed, frame, front + NEAREST, Math.min(farthest, front + FARTHEST));
    if (Double.isNaN(rear)) {
      return Optional.empty();
    }
    Position lower = frame.place(front, 0).rounded();
    Position higher = frame.place(rear, 0).rounded();
    return Optional.of(new LeadingLine(lower, higher, from, until));
  }

  /** How far ahead the ground is dry, and a step farther as well. */
  private static double dry(Seabed seabed, Frame frame, double from, double to) {
    for (double inland = from; inland < to; inland += STEP) {
      if (seabed.depth(frame.place(inland, 0)) < DRY
          && seabed.depth(frame.place(inland + STEP, 0)) < DRY) {
        return inland + INSIDE;
      }
    }
    return Double.NaN;
  }
}
