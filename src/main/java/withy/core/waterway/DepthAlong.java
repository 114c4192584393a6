package withy.core.waterway;

import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;

/**
 * The depth along a straight leg, as it is and not from samples: a bilinear field is a parabola
 * along every part of a leg that lies between the same four centres.
 */
final class DepthAlong {
  private final DepthField field;
  private final Position from;
  private final Position to;

  DepthAlong(DepthField field, Position from, Position to) {
    this.field = field;
    this.from = from;
    this.to = to;
  }

  /** Where on the leg it is least, the first of several such places. */
  Position shallowest() {
    Position least = from;
    double depth = field.depth(from);
    double begin = 0;
    for (double end : ends()) {
      Position there = at(begin + (end - begin) * new Parabola(begin, end).lowest());
      if (field.depth(there) < depth) {
        least = there;
        depth = field.depth(there);
      }
      begin = end;
    }
    return least;
  }

  /** The first place on the leg from which it is less than a depth; null where it never is. */
  @Nullable Position firstBelow(double depth) {
    double begin = 0;
    for (double end : ends()) {
      double share = new Parabola(begin, end).firstBelow(depth);
      if (share <= 1) {
        return at(begin + (end - begin) * share);
      }
      begin = end;
    }
    return null;
  }

  /** The shares of the leg at which it passes from one square of centres to the next, and 1. */
  private TreeSet<Double> ends() {
    TreeSet<Double> ends = new TreeSet<>();
    crossings(ends, from.x() - field.origin().x(), to.x() - field.origin().x(), field.columns());
    crossings(ends, from.y() - field.origin().y(), to.y() - field.origin().y(), field.rows());
    ends.add(1.0);
    return ends;
  }

  private void crossings(TreeSet<Double> ends, double start, double stop, int lines) {
    double low = Math.min(start, stop) / field.cell();
    double high = Math.max(start, stop) / field.cell();
    int last = (int) Math.min(Math.floor(high), lines - 1.0);
    for (int line = (int) Math.max(Math.ceil(low), 0); line <= last; line++) {
      double share = (line * field.cell() - start) / (stop - start);
      if (share > 0 && share < 1) {
        ends.add(share);
      }
    }
  }

  private Position at(double share) {
    return from.towards(to, share);
  }

  /** The depth over a part of the leg, a share of 0 at its beginning and of 1 at its end. */
  private final class Parabola {
    private final double square;
    private final double linear;
    private final double constant;

    Parabola(double begin, double end) {
      double first = field.depth(at(begin));
      double last = field.depth(at(end));
      this.square = 2 * (first + last) - 4 * field.depth(at((begin + end) / 2));
      this.linear = last - first - square;
      this.constant = first;
    }

    double lowest() {
      double vertex = -linear / (2 * square);
      if (square > 0 && vertex > 0 && vertex < 1) {
        return vertex;
      }
      return square + linear < 0 ? 1 : 0;
    }

    /** Above 1 where it never is. */
    double firstBelow(double depth) {
      double above = constant - depth;
      if (above < 0) {
        return 0;
      }
      double low = lowest();
      return value(low) < depth ? crossing(low, depth) : Double.POSITIVE_INFINITY;
    }

    /** Falling all the way to its lowest, it passes a depth once. */
    private double crossing(double low, double depth) {
      double dry = low;
      double wet = 0;
      while (wet < (wet + dry) / 2 && (wet + dry) / 2 < dry) {
        double middle = (wet + dry) / 2;
        if (value(middle) < depth) {
          dry = middle;
        } else {
          wet = middle;
        }
      }
      return dry;
    }

    private double value(double share) {
      return (square * share + linear) * share + constant;
    }
  }
}
