package withy.drawing;

import java.util.ArrayList;
import java.util.List;

/** A flat shape with straight edges and no dents, its corners clockwise on the screen. */
record Polygon(List<Vec> corners) {
  Polygon {
    corners = List.copyOf(corners);
  }

  /** Corners given as x and y in turn. */
  static Polygon of(double... points) {
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < points.length; i += 2) {
      corners.add(new Vec(points[i], points[i + 1]));
    }
    return new Polygon(corners);
  }

  static Polygon box(double left, double top, double right, double bottom) {
    return of(left, top, right, top, right, bottom, left, bottom);
  }

  /** What lies between two parallel lines, at distances from the origin along a unit vector. */
  Polygon between(Vec along, double from, double to) {
    return upTo(along, to).upTo(along.times(-1), -from);
  }

  /** What lies on the near side of a line at a distance along a unit vector. */
  private Polygon upTo(Vec along, double distance) {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec here = corners.get(i);
      Vec next = corners.get((i + 1) % corners.size());
      double a = here.dot(along) - distance;
      double b = next.dot(along) - distance;
      if (a <= 0) {
        kept.add(here);
      }
      if (a < 0 && b > 0 || a > 0 && b < 0) {
        kept.add(here.plus(next.minus(here).times(a / (a - b))));
      }
    }
    return new Polygon(kept);
  }

  /** The shape with every edge moved inwards. */
  Polygon inset(double by) {
    Polygon inner = this;
    for (int i = 0; i < corners.size(); i++) {
      Vec edge = corners.get((i + 1) % corners.size()).minus(corners.get(i));
      Vec outward = new Vec(edge.y(), -edge.x()).times(1 / edge.length());
      inner = inner.upTo(outward, corners.get(i).dot(outward) - by);
    }
    return inner;
  }

  /** The shape shrunk towards the mean of its corners. */
  Polygon shrunk(double factor) {
    Vec middle = middle();
    return new Polygon(
        corners.stream().map(each -> middle.plus(each.minus(middle).times(factor))).toList());
  }

  Polygon moved(double x, double y) {
    return new Polygon(corners.stream().map(each -> each.plus(new Vec(x, y))).toList());
  }

  Vec middle() {
    Vec sum = new Vec(0, 0);
    for (Vec each : corners) {
      sum = sum.plus(each);
    }
    return sum.times(1.0 / corners.size());
  }

  /** The least distance of a corner along a unit vector. */
  double nearest(Vec along) {
    return corners.stream().mapToDouble(each -> each.dot(along)).min().orElse(0);
  }

  /** The greatest distance of a corner along a unit vector. */
  double farthest(Vec along) {
    return corners.stream().mapToDouble(each -> each.dot(along)).max().orElse(0);
  }

  double top() {
    return nearest(Vec.DOWN);
  }

  double bottom() {
    return farthest(Vec.DOWN);
  }

  /** The width at a height. */
  double widthAt(double y) {
    Polygon slice = between(Vec.DOWN, y - 0.01, y + 0.01);
    return slice.farthest(Vec.RIGHT) - slice.nearest(Vec.RIGHT);
  }

  boolean isEmpty() {
    return corners.size() < 3;
  }

  PathData path() {
    return path(each -> each);
  }

  /** The path through the corners as a surface shows them. */
  PathData path(java.util.function.UnaryOperator<Vec> shown) {
    PathData path = new PathData();
    for (int i = 0; i < corners.size(); i++) {
      Vec at = shown.apply(corners.get(i));
      if (i == 0) {
        path.move(at.x(), at.y());
      } else {
        path.line(at.x(), at.y());
      }
    }
    return path.close();
  }
}
