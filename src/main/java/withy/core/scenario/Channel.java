package withy.core.scenario;

import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.waterway.Fairway;

/** A fairway as the stream or a dredger has cut it. */
final class Channel {
  /** Metres over which the bank rises from the edge to the flats beside it. */
  static final double BANK = 30;

  /** Metres before and behind a place over which a bend is felt. */
  private static final double REACH = 120;

  /** Metres from one look at the bends to the next. */
  private static final double STEP = 20;

  /** The share of its half-width by which a bend moves the deepest water outwards. */
  private static final double OUTWARDS = 0.45;

  private final Fairway fairway;
  private final double deepest;
  private final double edge;
  private final double[] bends;

  /**
   * A channel.
   *
   * @param deepest metres below datum in its middle
   * @param edge metres below datum along its edges
   */
  Channel(Fairway fairway, double deepest, double edge) {
    this.fairway = fairway;
    this.deepest = deepest;
    this.edge = edge;
    this.bends = bends(fairway.line());
  }

  Fairway fairway() {
    return fairway;
  }

  /** From -1 to 1: how sharply the line turns to port, so that its outer side is starboard. */
  private static double[] bends(Polyline line) {
    double[] bends = new double[(int) (line.length() / STEP) + 2];
    for (int i = 0; i < bends.length; i++) {
      double along = i * STEP;
      double turn =
          line.bearingAt(along + REACH).relativeTo(line.bearingAt(Math.max(0, along - REACH)));
      bends[i] = Math.max(-1, Math.min(1, -turn / 45));
    }
    return bends;
  }

  /** The depth at a place whose foot on the fairway is known, in flats of another depth. */
  double carved(Foot foot, double flats) {
    double half = fairway.width() / 2;
    double beyond = foot.distance() - half;
    if (beyond >= BANK) {
      return flats;
    }
    if (beyond <= 0) {
      return Math.max(flats, inside(foot, half));
    }
    double up = Unevenness.smooth(beyond / BANK);
    return Math.max(flats, edge + (flats - edge) * up);
  }

  /** Deepest a little towards the outer side of a bend. */
  private double inside(Foot foot, double half) {
    double bend = bends[(int) (foot.along() / STEP)];
    double across = foot.off() / half - OUTWARDS * bend;
    return deepest - (deepest - edge) * Math.min(1, across * across);
  }
}
