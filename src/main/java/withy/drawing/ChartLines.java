package withy.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.mark.MarkKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** Leading lines, and beside fairways the places of the arrows of their direction. */
final class ChartLines {
  private static final double ARROW = 0.72;

  /** A line through two marks in line, from the rear one out to the edge of the chart. */
  record Leading(List<Vec> line, int bearing) {}

  /** An arrow of the conventional direction. */
  record Arrow(Vec at, Bearing direction) {
    static Box box(Vec at, Bearing direction) {
      double angle = StrictMath.toRadians(direction.degrees());
      double sine = StrictMath.abs(StrictMath.sin(angle));
      double cosine = StrictMath.abs(StrictMath.cos(angle));
      double length = BuoyageArrow.LENGTH * ARROW;
      double width = BuoyageArrow.WIDTH * ARROW;
      return Box.around(at, length * sine + width * cosine, length * cosine + width * sine);
    }

    void draw(SvgWriter svg, ChartInk ink) {
      BuoyageArrow.draw(svg, at, direction, ARROW, ink.halo(), ink.compass());
    }
  }

  private ChartLines() {}

  static List<Leading> leading(Waterway water, ChartSheet sheet) {
    List<Leading> lines = new ArrayList<>();
    for (PlacedMark front : water.marks()) {
      if (front.kind().equals(MarkKind.LEADING_FRONT)) {
        water.marks().stream()
            .filter(each -> each.kind().equals(MarkKind.LEADING_REAR))
            .min(Comparator.comparingDouble(each -> each.position().distanceTo(front.position())))
            .ifPresent(rear -> lines.add(leading(front.position(), rear.position(), sheet)));
      }
    }
    return lines;
  }

  private static Leading leading(Position front, Position rear, ChartSheet sheet) {
    Bearing seaward = rear.bearingTo(front);
    double far = sheet.field().width() + sheet.field().height();
    List<Vec> whole = List.of(sheet.at(rear), sheet.at(front.moved(seaward, far)));
    List<List<Vec>> parts = sheet.inside(whole);
    int bearing = (int) Math.round(seaward.reciprocal().degrees()) % 360;
    return new Leading(parts.isEmpty() ? whole.subList(0, 0) : parts.get(0), bearing);
  }

  /** Where the arrow of a fairway hides least: beside it, not in it. */
  static Arrow arrow(Fairway fairway, ChartSheet sheet, ChartRoom room) {
    double length = fairway.line().length();
    double off = fairway.width() / 2 + 16 / sheet.scale();
    @Nullable Arrow best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int share = 1; share <= 19; share++) {
      for (double away = off; away < off + 40 / sheet.scale(); away += 9 / sheet.scale()) {
        for (double side : new double[] {away, -away}) {
          Bearing direction = fairway.line().bearingAt(length * share / 20);
          Vec at = sheet.at(fairway.line().beside(length * share / 20, side));
          double cost = room.cost(Arrow.box(at, direction)) + (away - off) * sheet.scale() / 10;
          if (cost < least) {
            least = cost;
            best = new Arrow(at, direction);
          }
        }
      }
    }
    if (best == null) {
      throw new IllegalStateException("a fairway has sides");
    }
    return best;
  }
}
