package withy.core.scenario;

import withy.core.geometry.Polyline.Foot;
import withy.core.waterway.Fairway;

/**
 * A fairway as the stream or a dredger has cut it.
 *
 * @param deepest metres below datum in its middle
 * @param edge metres below datum along its edges
 */
record Channel(Fairway fairway, double deepest, double edge) {
  /** Metres over which the bank rises from the edge to the flats beside it. */
  static final double BANK = 30;

  /** Metres before and behind a place over which a bend is felt. */
  private static final double REACH = 120;

  /** The depth at a place whose foot on the fairway is known, in flats of another depth. */
  double carved(Foot foot, double flats) {
    double half = fairway.width() / 2;
    double inside = inside(foot, half);
    if (foot.distance() <= half) {
      return Math.max(flats, inside);
    }
    double up = Unevenness.smooth((foot.distance() - half) / BANK);
    return Math.max(flats, edge + (flats - edge) * up);
  }

  /** Deepest a little towards the outer side of a bend. */
  private double inside(Foot foot, double half) {
    double across = foot.off() / half - 0.45 * bend(foot.along());
    double least = Math.min(1, across * across);
    return deepest - (deepest - edge) * least;
  }

  /** From -1 to 1: how sharply the fairway turns to port, so that its outer side is starboard. */
  private double bend(double along) {
    double turn =
        fairway
            .line()
            .bearingAt(along + REACH)
            .relativeTo(fairway.line().bearingAt(Math.max(0, along - REACH)));
    return Math.max(-1, Math.min(1, -turn / 45));
  }
}
