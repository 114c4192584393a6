package withy.drawing;

import java.util.List;
import withy.core.waterway.Danger;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * Dangers as charts show them: a rock as a cross, with dots in its angles where it is awash, as a
 * star where it dries; a wreck as a keel with three ribs; round each a dotted line, round a shoal
 * that line alone; the least depth beside. A bar is read from its soundings.
 */
final class ChartDangers {
  private static final double ARM = 4;
  private static final double LEAST_RING = 8;
  private static final double BESIDE_A_MARK = 8;

  /** Metres about datum between which a rock counts as awash. */
  private static final double AWASH = 0.3;

  private final ChartSheet sheet;
  private final Waterway water;

  ChartDangers(ChartSheet sheet, Waterway water) {
    this.sheet = sheet;
    this.water = water;
  }

  List<Danger> shown() {
    return water.dangers().stream().filter(each -> hasSign(each) || isRinged(each)).toList();
  }

  static boolean hasSign(Danger danger) {
    return switch (danger.kind()) {
      case ROCK, WRECK -> true;
      case SHOAL, BAR -> false;
    };
  }

  private static boolean isRinged(Danger danger) {
    return switch (danger.kind()) {
      case ROCK, WRECK, SHOAL -> true;
      case BAR -> false;
    };
  }

  /** The room of its sign; of a danger without one, its middle. */
  Box box(Danger danger) {
    Vec at = sign(danger);
    return hasSign(danger) ? Box.around(at, 2 * ARM + 5, 2 * ARM + 2) : Box.around(at, 1, 1);
  }

  double radius(Danger danger) {
    return Math.max(LEAST_RING, danger.radius() * sheet.scale());
  }

  /** Where its sign stands: beside a mark that stands on it, within its extent. */
  Vec sign(Danger danger) {
    Vec at = sheet.at(danger.at());
    for (PlacedMark each : water.marks()) {
      if (hasSign(danger) && sheet.at(each.position()).minus(at).length() < BESIDE_A_MARK) {
        double aside = Math.max(8, 0.62 * radius(danger));
        return at.plus(new Vec(-aside, 0.7 * aside));
      }
    }
    return at;
  }

  void draw(SvgWriter svg, Danger danger, ChartInk ink) {
    Vec at = sheet.at(danger.at());
    double radius = radius(danger);
    if (isRinged(danger) && sheet.area().contains(Box.around(at, 2 * radius, 2 * radius))) {
      svg.element(
          "circle",
          "cx",
          at.x(),
          "cy",
          at.y(),
          "r",
          radius,
          "fill",
          "none",
          "stroke",
          ink.words(),
          "stroke-width",
          1.3,
          "stroke-linecap",
          "round",
          "stroke-dasharray",
          "0.1 3");
    }
    if (hasSign(danger)) {
      Pen.line(svg, sign(danger, sign(danger)), ink.words(), 1.2);
    }
  }

  private static PathData sign(Danger danger, Vec at) {
    return switch (danger.kind()) {
      case WRECK -> wreck(at);
      case ROCK, SHOAL, BAR -> danger.leastDepth() < -AWASH ? star(at) : plus(at, danger);
    };
  }

  private static PathData plus(Vec at, Danger danger) {
    PathData plus = cross(at, ARM);
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

  private static PathData cross(Vec at, double arm) {
    return PathData.line(at.x() - arm, at.y(), at.x() + arm, at.y())
        .move(at.x(), at.y() - arm)
        .line(at.x(), at.y() + arm);
  }
}
