package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.waterway.DepthField;

/**
 * The sheet on which a water is drawn, north up: a frame round the field, and a scale below it.
 *
 * @param scale units of the picture in a metre
 * @param area inside the frame
 */
record ChartSheet(DepthField field, double scale, Box area) {
  /** Between the frame and the edges of the sheet. */
  static final double RIM = 6;

  private static final double WIDEST = 330;
  private static final double HIGHEST = 400;
  private static final double FOOT = 24;

  static ChartSheet of(DepthField field) {
    double across = (WIDEST - 2 * RIM) / field.width();
    double scale = Math.min(across, (HIGHEST - RIM - FOOT) / field.height());
    Box area = new Box(RIM, RIM, RIM + field.width() * scale, RIM + field.height() * scale);
    return new ChartSheet(field, scale, area);
  }

  double width() {
    return area.right() + RIM;
  }

  double height() {
    return area.bottom() + FOOT;
  }

  Vec at(Position place) {
    return new Vec(
        area.left() + (place.x() - field.origin().x()) * scale,
        area.bottom() - (place.y() - field.origin().y()) * scale);
  }

  Position place(Vec at) {
    return new Position(
        field.origin().x() + (at.x() - area.left()) / scale,
        field.origin().y() + (area.bottom() - at.y()) / scale);
  }

  /** Charted metres at a place of the picture. */
  double depth(Vec at) {
    return field.depth(place(at));
  }

  List<Vec> at(Polyline line) {
    return line.points().stream().map(this::at).toList();
  }

  /** The parts of a way that lie inside the frame. */
  List<List<Vec>> inside(List<Vec> way) {
    List<List<Vec>> parts = new ArrayList<>();
    List<Vec> part = new ArrayList<>();
    for (int i = 1; i < way.size(); i++) {
      double[] shares = shares(way.get(i - 1), way.get(i));
      if (shares[0] < shares[1]) {
        Vec leg = way.get(i).minus(way.get(i - 1));
        if (part.isEmpty()) {
          part.add(way.get(i - 1).plus(leg.times(shares[0])));
        }
        part.add(way.get(i - 1).plus(leg.times(shares[1])));
      }
      if (shares[1] < 1 || i == way.size() - 1) {
        if (part.size() > 1) {
          parts.add(part);
        }
        part = new ArrayList<>();
      }
    }
    return parts;
  }

  /** From which to which share of a leg it lies inside; the same twice where it never does. */
  private double[] shares(Vec from, Vec to) {
    double[] shares = {0, 1};
    cut(shares, from.x() - area.left(), to.x() - area.left());
    cut(shares, area.right() - from.x(), area.right() - to.x());
    cut(shares, from.y() - area.top(), to.y() - area.top());
    cut(shares, area.bottom() - from.y(), area.bottom() - to.y());
    return shares[0] < shares[1] ? shares : new double[] {0, 0};
  }

  private static void cut(double[] shares, double from, double to) {
    if (from < 0 && to < 0) {
      shares[1] = shares[0];
    } else if (from < 0) {
      shares[0] = Math.max(shares[0], from / (from - to));
    } else if (to < 0) {
      shares[1] = Math.min(shares[1], from / (from - to));
    }
  }
}
