package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Bearing;

/** The compass rose of a chart: degrees true, north up. */
final class ChartRose {
  static final double RADIUS = 24;

  private static final double SIZE = 8.5;
  private static final double ROOM = 2 * RADIUS + 33;

  private ChartRose() {}

  /** Boxes over the whole chart in which it could stand, those nearest to a corner first. */
  static List<Box> places(Box area) {
    List<Box> places = new ArrayList<>();
    double across = (area.width() - ROOM - 4) / 8;
    double down = (area.height() - ROOM - 4) / 8;
    for (int away = 0; away <= 8; away++) {
      for (int i = 0; i < 81; i++) {
        int column = i % 9;
        int row = i / 9;
        if (Math.min(column, 8 - column) + Math.min(row, 8 - row) == away) {
          double left = area.left() + 2 + column * across;
          double top = area.top() + 2 + row * down;
          places.add(new Box(left, top, left + ROOM, top + ROOM));
        }
      }
    }
    return places;
  }

  static void draw(SvgWriter svg, Vec middle, ChartInk ink) {
    Pen.circle(svg, middle, RADIUS, "none", ink.compass(), 0.7);
    PathData ticks = new PathData();
    for (int degrees = 0; degrees < 360; degrees += 10) {
      double inner = degrees % 30 == 0 ? RADIUS - 5 : RADIUS - 2.6;
      Vec from = middle.plus(Vec.along(Bearing.of(degrees), inner));
      Vec to = middle.plus(Vec.along(Bearing.of(degrees), RADIUS));
      ticks.move(from.x(), from.y()).line(to.x(), to.y());
    }
    double n = middle.y() - RADIUS + 6;
    ticks.move(middle.x(), middle.y() + 9).line(middle.x(), n);
    ticks.move(middle.x() - 4, middle.y()).line(middle.x() + 4, middle.y());
    Pen.line(svg, ticks, ink.compass(), 0.8);
    PathData head =
        PathData.polygon(middle.x(), n - 2, middle.x() + 2.6, n + 6, middle.x() - 2.6, n + 6);
    Pen.area(svg, head, ink.compass(), ink.compass(), 0.3);
    for (int degrees = 0; degrees < 360; degrees += 90) {
      double away = RADIUS + (degrees % 180 == 0 ? 6 : 9);
      Vec at = middle.plus(Vec.along(Bearing.of(degrees), away));
      Pen.letters(svg, Lettering.figures(degrees), at, SIZE, ink.compass());
    }
  }
}
