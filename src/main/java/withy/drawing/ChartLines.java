package withy.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.mark.MarkKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/** Leading lines, and beside fairways the places of the arrows of their direction. */
final class ChartLines {
  private static final double ARROW = 0.72;

  /** Units between the edge of a fairway and the middle of its arrow. */
  private static final double NEAREST = 16;

  private static final double FARTHEST = 80;

  /** What it costs to stand nearer to another fairway; less than to hide something. */
  private static final double ASTRAY = 40;

  private static final double STEP = 8;
  private static final int SHARES = 20;

  /** A line through two marks in line, from the rear one out to the edge of the chart. */
  record Leading(List<Vec> line, int bearing) {}

  /** An arrow of the conventional direction. */
  record Arrow(Vec at, Bearing direction) {
    Box box() {
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

  /** Where the arrow of a fairway hides least: beside it, if it may be near its middle. */
  static Arrow arrow(Fairway fairway, Waterway water, ChartSheet sheet, ChartRoom room) {
    List<Arrow> arrows = new ArrayList<>();
    double length = fairway.line().length();
    for (double away = NEAREST; away < FARTHEST; away += STEP) {
      for (int share = 0; share < SHARES; share++) {
        double along = length * (SHARES / 2 + (share + 1) / 2 * (share % 2 == 0 ? 1 : -1)) / SHARES;
        double off = fairway.width() / 2 + away / sheet.scale();
        Bearing direction = fairway.line().bearingAt(along);
        arrows.add(new Arrow(sheet.at(fairway.line().beside(along, off)), direction));
        arrows.add(new Arrow(sheet.at(fairway.line().beside(along, -off)), direction));
      }
    }
    return arrows.stream()
        .min(
            Comparator.comparingDouble(
                each ->
                    room.cost(each.box()) + (isBeside(fairway, each, water, sheet) ? 0 : ASTRAY)))
        .orElseThrow();
  }

  /** Whether no other fairway runs as near to an arrow as its own. */
  private static boolean isBeside(Fairway own, Arrow arrow, Waterway water, ChartSheet sheet) {
    Position place = sheet.place(arrow.at());
    double near = own.line().foot(place).distance();
    return water.fairways().stream()
        .allMatch(
            each -> each.equals(own) || each.line().foot(place).distance() - each.width() > near);
  }
}
