package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Waterway;

/**
 * Dangers as charts show them: a rock as a cross, with dots in its angles where it is awash, as a
 * star where it dries; a wreck as a keel with three ribs; each in a dotted ring. The contour that
 * bounds a shoal is dotted. The least depth stands beside. A bar is named, with its least depth.
 */
final class ChartDangers {
  private static final double ARM = 4.6;
  private static final double RING = 8;

  /** Places of a ring that is large enough to bound a shoal. */
  private static final int LEAST_RING = 24;

  /** Metres about datum between which a rock counts as awash. */
  private static final double AWASH = 0.3;

  private final ChartSheet sheet;
  private final Waterway water;

  ChartDangers(ChartSheet sheet, Waterway water) {
    this.sheet = sheet;
    this.water = water;
  }

  List<Danger> shown() {
    return water.dangers().stream().filter(each -> each.kind() != DangerKind.BAR).toList();
  }

  private static boolean hasSign(Danger danger) {
    return danger.kind() != DangerKind.SHOAL;
  }

  /** The room of its sign; of a shoal, its middle. */
  Box box(Danger danger) {
    double size = hasSign(danger) ? 2 * RING + 1 : 1;
    return Box.around(sheet.at(danger.at()), size, size);
  }

  void draw(SvgWriter svg, Danger danger, ChartContours contours, ChartInk ink) {
    Vec at = sheet.at(danger.at());
    if (!sheet.area().grown(-RING).contains(at)) {
      return;
    }
    if (hasSign(danger)) {
      dotted(svg, PathData.circle(at.x(), at.y(), RING), ink, "");
      Pen.line(svg, sign(danger, at), ink.words(), 1.2);
    } else {
      dotted(svg, outline(danger, contours), ink, "scale(.1)");
    }
  }

  /** The contour that bounds the shallowest part of a shoal that is large enough to be seen. */
  private String outline(Danger danger, ChartContours contours) {
    for (double level : ChartContours.LEVELS) {
      List<List<Position>> rings =
          contours.shallowerThan(level).stream().filter(ring -> isWithin(ring, danger)).toList();
      String path = ContourPath.of(rings, sheet);
      if (rings.stream().anyMatch(ring -> ring.size() > LEAST_RING) && !path.isEmpty()) {
        return path;
      }
    }
    return "";
  }

  private static boolean isWithin(List<Position> ring, Danger danger) {
    return ring.stream().allMatch(each -> each.distanceTo(danger.at()) <= danger.radius());
  }

  private static void dotted(SvgWriter svg, Object path, ChartInk ink, String transform) {
    boolean tenth = !transform.isEmpty();
    List<Object> attributes = new ArrayList<>(List.of("d", path, "fill", "none"));
    attributes.addAll(List.of("stroke", ink.words(), "stroke-linecap", "round"));
    attributes.addAll(List.of("stroke-width", tenth ? 14 : 1.3));
    attributes.addAll(List.of("stroke-dasharray", tenth ? "1 30" : "0.1 3"));
    if (tenth) {
      attributes.addAll(List.of("transform", transform));
    }
    svg.element("path", attributes.toArray());
  }

  private static PathData sign(Danger danger, Vec at) {
    return switch (danger.kind()) {
      case WRECK -> wreck(at);
      case ROCK, SHOAL, BAR -> danger.leastDepth() < -AWASH ? star(at) : plus(at, danger);
    };
  }

  private static PathData plus(Vec at, Danger danger) {
    PathData plus = cross(at);
    if (danger.leastDepth() <= AWASH) {
      double d = ARM * 0.55;
      for (double[] each : new double[][] {{-d, -d}, {d, -d}, {-d, d}, {d, d}}) {
        plus.move(at.x() + each[0], at.y() + each[1]).line(at.x() + each[0], at.y() + each[1]);
      }
    }
    return plus;
  }

  private static PathData star(Vec at) {
    double x = ARM * 0.87;
    double y = ARM / 2;
    return PathData.line(at.x(), at.y() - ARM, at.x(), at.y() + ARM)
        .move(at.x() - x, at.y() - y)
        .line(at.x() + x, at.y() + y)
        .move(at.x() - x, at.y() + y)
        .line(at.x() + x, at.y() - y);
  }

  private static PathData wreck(Vec at) {
    PathData wreck = PathData.line(at.x() - 6, at.y(), at.x() + 6, at.y());
    for (int rib = -1; rib <= 1; rib++) {
      double half = rib == 0 ? ARM : ARM * 0.65;
      wreck.move(at.x() + rib * 3.2, at.y() - half).line(at.x() + rib * 3.2, at.y() + half);
    }
    return wreck;
  }

  private static PathData cross(Vec at) {
    return PathData.line(at.x() - ARM, at.y(), at.x() + ARM, at.y())
        .move(at.x(), at.y() - ARM)
        .line(at.x(), at.y() + ARM);
  }
}
