package withy.core.hydrography;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Polyline;
import withy.core.geometry.Polyline.Foot;
import withy.core.geometry.Position;
import withy.core.waterway.Fairway;

/**
 * A channel as the stream or a dredger has cut it. Its course may run on beyond the chart; the
 * fairway is the part in the chart.
 */
final class Channel {
  /** Metres over which the bank rises from the edge to the flats beside it. */
  static final double BANK = 30;

  /** Metres between the rim of the chart and the ends of a fairway that runs on beyond it. */
  private static final double RIM = 45;

  /** Metres before and behind a place over which a bend is felt. */
  private static final double REACH = 120;

  /** Metres from one look at the bends to the next. */
  private static final double STEP = 20;

  /** The share of its half-width by which a bend moves the deepest water outwards. */
  private static final double OUTWARDS = 0.45;

  /** Metres by which the stream digs deeper in the sharpest bend. */
  private static final double SCOUR = 1.6;

  /** A sill across a channel. */
  private record Sill(double along, double half, double depth) {}

  private final Polyline course;
  private final Fairway fairway;
  private final double deepest;
  private final double edge;
  private final double[] bends;
  private final Course feet;
  private final List<Sill> sills = new ArrayList<>();

  /**
   * A channel.
   *
   * @param deepest metres below datum in its middle
   * @param edge metres below datum along its edges
   */
  Channel(String id, Polyline course, double width, double deepest, double edge) {
    this.course = course;
    this.fairway = new Fairway(id, charted(course), width);
    this.deepest = deepest;
    this.edge = edge;
    this.bends = bends(course);
    this.feet = new Course(course);
  }

  /** With a sill across it: metres along the course, half its breadth, and its depth. */
  Channel withSill(double along, double half, double depth) {
    sills.add(new Sill(along, half, depth));
    return this;
  }

  Fairway fairway() {
    return fairway;
  }

  Polyline course() {
    return course;
  }

  /** Where the course comes nearest to a place. */
  Foot foot(Position place) {
    return feet.foot(place);
  }

  /** From -1 to 1: how sharply the course turns to port, so that its outer side is starboard. */
  double bend(double along) {
    return bends[Math.min(bends.length - 1, (int) (along / STEP))];
  }

  /** From 0 to 1: how far a place beside the course lies on the inner side of a bend. */
  double inner(Foot foot) {
    return Math.max(0, -bend(foot.along()) * Math.signum(foot.off()));
  }

  /** The part of a course from where it enters the chart to where it leaves it. */
  private static Polyline charted(Polyline course) {
    List<Position> kept = new ArrayList<>();
    for (int i = 1; i < course.points().size(); i++) {
      Position from = course.points().get(i - 1);
      Position to = course.points().get(i);
      double[] shares = {0, 1};
      hold(shares, from.x(), to.x());
      hold(shares, from.y(), to.y());
      if (shares[0] < shares[1]) {
        kept.add(from.towards(to, shares[0]).rounded());
        kept.add(from.towards(to, shares[1]).rounded());
      } else if (kept.stream().distinct().count() > 1) {
        break;
      }
    }
    return Polyline.through(kept);
  }

  /** Narrows the shares of a leg to those at which a coordinate lies between the rims. */
  private static void hold(double[] shares, double from, double to) {
    double least = RIM;
    double most = Seabed.SIDE - RIM;
    if (from == to) {
      shares[1] = from < least || from > most ? 0 : shares[1];
      return;
    }
    double one = (least - from) / (to - from);
    double other = (most - from) / (to - from);
    shares[0] = Math.max(shares[0], Math.min(one, other));
    shares[1] = Math.min(shares[1], Math.max(one, other));
  }

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

  /** The depth at a place whose foot on the course is known, in flats of another depth. */
  double carved(Foot foot, double flats) {
    double half = fairway.width() / 2;
    double beyond = foot.distance() - half;
    if (beyond >= BANK) {
      return flats;
    }
    double cut = beyond <= 0 ? inside(foot, half) : edge;
    for (Sill each : sills) {
      double away = Math.abs(foot.along() - each.along()) / each.half();
      cut = Math.min(cut, each.depth() + (deepest - each.depth()) * Unevenness.smooth(away));
    }
    return Math.max(
        flats, beyond <= 0 ? cut : cut + (flats - cut) * Unevenness.smooth(beyond / BANK));
  }

  /** Deepest a little towards the outer side of a bend. */
  private double inside(Foot foot, double half) {
    double bend = bend(foot.along());
    double across = foot.off() / half - OUTWARDS * bend;
    double pool = deepest + SCOUR * Math.abs(bend);
    return pool - (pool - edge) * Math.min(1, across * across);
  }
}
