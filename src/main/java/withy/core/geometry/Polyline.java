package withy.core.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A way over the plane from point to point.
 *
 * @param points in order; at least two, no two neighbours the same
 */
public record Polyline(List<Position> points) {
  /** Metres within which a place lies on the line. */
  private static final double REACHED = 0.01;

  /**
   * @throws IllegalArgumentException if there are fewer than two points, or two neighbours coincide
   */
  public Polyline {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a line has two points or more");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).equals(points.get(i - 1))) {
        throw new IllegalArgumentException("point " + i + " of the line repeats the one before");
      }
    }
  }

  /**
   * A way through places, of which neighbours may be the same: it passes such a place once.
   *
   * @throws IllegalArgumentException if there are not two different neighbours
   */
  public static Polyline through(List<Position> places) {
    List<Position> points = new ArrayList<>(places.size());
    for (Position each : places) {
      if (points.isEmpty() || !points.get(points.size() - 1).equals(each)) {
        points.add(each);
      }
    }
    return new Polyline(points);
  }

  public static Polyline of(Position... points) {
    return new Polyline(List.of(points));
  }

  /**
   * The place on a line that lies nearest to some other.
   *
   * @param along metres from the beginning of the line
   * @param off metres from the line; positive to starboard of its direction
   */
  public record Foot(double along, double off) {
    /** Metres from the line, on either side. */
    public double distance() {
      return Math.abs(off);
    }
  }

  public Position start() {
    return points.get(0);
  }

  public Position end() {
    return points.get(points.size() - 1);
  }

  /** Metres from the beginning to the end. */
  public double length() {
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      length += leg(i);
    }
    return length;
  }

  private double leg(int to) {
    double dx = points.get(to).x() - points.get(to - 1).x();
    double dy = points.get(to).y() - points.get(to - 1).y();
    return Math.sqrt(dx * dx + dy * dy);
  }

  /**
   * The line up to the first place on it that lies within a centimetre of another one; the whole
   * line where none does.
   */
  public Polyline until(Position place) {
    for (int i = 1; i < points.size(); i++) {
      Foot foot = new Polyline(points.subList(i - 1, i + 1)).foot(place);
      if (foot.distance() < REACHED && foot.along() > 0) {
        List<Position> gone = new ArrayList<>(points.subList(0, i));
        gone.add(place);
        return through(gone);
      }
    }
    return this;
  }

  /** The place at a distance from the beginning; the ends for distances beyond them. */
  public Position at(double along) {
    double left = Math.max(0, along);
    for (int i = 1; i < points.size(); i++) {
      Position from = points.get(i - 1);
      Position to = points.get(i);
      double leg = leg(i);
      if (left <= leg) {
        return from.towards(to, left / leg);
      }
      left -= leg;
    }
    return end();
  }

  /** The direction of the line at a distance from the beginning. */
  public Bearing bearingAt(double along) {
    double left = Math.max(0, along);
    for (int i = 1; i < points.size(); i++) {
      double leg = leg(i);
      if (left <= leg || i == points.size() - 1) {
        return points.get(i - 1).bearingTo(points.get(i));
      }
      left -= leg;
    }
    throw new IllegalStateException("a line has a leg");
  }

  /** The place beside the line, metres to starboard of its direction (to port if negative). */
  public Position beside(double along, double off) {
    return at(along).moved(bearingAt(along).plus(90), off);
  }

  /** Where the line comes nearest to a place. */
  public Foot foot(Position place) {
    double best = Double.POSITIVE_INFINITY;
    double along = 0;
    double side = 1;
    double gone = 0;
    for (int i = 1; i < points.size(); i++) {
      Position from = points.get(i - 1);
      Position to = points.get(i);
      double dx = to.x() - from.x();
      double dy = to.y() - from.y();
      double square = dx * dx + dy * dy;
      double px = place.x() - from.x();
      double py = place.y() - from.y();
      double share = Math.min(1, Math.max(0, (px * dx + py * dy) / square));
      double ox = px - share * dx;
      double oy = py - share * dy;
      double off = ox * ox + oy * oy;
      double leg = Math.sqrt(square);
      if (off < best) {
        best = off;
        along = gone + share * leg;
        side = dx * py - dy * px > 0 ? -1 : 1;
      }
      gone += leg;
    }
    return new Foot(along, side * Math.sqrt(best));
  }

  /** The same way the other way round. */
  public Polyline reversed() {
    List<Position> back = new ArrayList<>(points);
    Collections.reverse(back);
    return new Polyline(back);
  }

  /** The way with every corner rounded twice (Chaikin 1974); the ends stay. */
  public Polyline rounded() {
    return cut(cut(points).points());
  }

  private static Polyline cut(List<Position> corners) {
    List<Position> rounded = new ArrayList<>();
    rounded.add(corners.get(0));
    for (int i = 1; i < corners.size(); i++) {
      Position from = corners.get(i - 1);
      Position to = corners.get(i);
      if (i > 1) {
        rounded.add(from.towards(to, 0.25));
      }
      if (i < corners.size() - 1) {
        rounded.add(from.towards(to, 0.75));
      }
    }
    rounded.add(corners.get(corners.size() - 1));
    return new Polyline(rounded);
  }
}
