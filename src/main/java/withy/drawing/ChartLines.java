package withy.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.mark.MarkKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.LeadingLine;
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

  /**
   * A line through two marks in line, from the rear one out to the edge of the chart.
   *
   * @param line as far as it lies in the chart
   * @param followed the parts along which a boat is led
   * @param other the parts along which the line is not to be followed
   */
  record Leading(List<Vec> line, List<List<Vec>> followed, List<List<Vec>> other, int bearing) {
    void draw(SvgWriter svg, ChartInk ink) {
      if (!followed.isEmpty()) {
        Pen.line(svg, ChartTracks.path(followed), ink.words(), 1);
      }
      if (!other.isEmpty()) {
        Pen.dashed(svg, ChartTracks.path(other), ink.words(), 0.9, "6 3.5");
      }
    }
  }

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

  /** The lines of a water; where it names none, those through its pairs of leading marks. */
  static List<Leading> leading(Waterway water, ChartSheet sheet) {
    List<Leading> lines = new ArrayList<>();
    water.leadingLines().forEach(each -> lines.add(leading(each, sheet)));
    for (PlacedMark front : lines.isEmpty() ? water.marks() : List.<PlacedMark>of()) {
      if (front.kind().equals(MarkKind.LEADING_FRONT)) {
        water.marks().stream()
            .filter(each -> each.kind().equals(MarkKind.LEADING_REAR))
            .min(Comparator.comparingDouble(each -> each.position().distanceTo(front.position())))
            .ifPresent(rear -> lines.add(untold(front.position(), rear.position(), sheet)));
      }
    }
    return lines;
  }

  private static Leading leading(LeadingLine line, ChartSheet sheet) {
    Position far = line.from().moved(line.bearing().reciprocal(), sheet.field().width());
    List<List<Vec>> followed = sheet.inside(sheet.at(line.followed()));
    List<List<Vec>> other =
        new ArrayList<>(sheet.inside(sheet.at(Polyline.of(line.rear(), line.until()))));
    other.addAll(sheet.inside(sheet.at(Polyline.of(line.from(), far))));
    List<List<Vec>> whole = sheet.inside(sheet.at(Polyline.of(line.rear(), far)));
    return new Leading(first(whole), followed, other, whole(line.bearing()));
  }

  /** A line of which nobody says how far it is to be followed. */
  private static Leading untold(Position front, Position rear, ChartSheet sheet) {
    Bearing seaward = rear.bearingTo(front);
    double far = sheet.field().width() + sheet.field().height();
    List<List<Vec>> parts = sheet.inside(sheet.at(Polyline.of(rear, front.moved(seaward, far))));
    return new Leading(first(parts), List.of(), parts, whole(seaward.reciprocal()));
  }

  private static List<Vec> first(List<List<Vec>> parts) {
    return parts.isEmpty() ? List.of() : parts.get(0);
  }

  private static int whole(Bearing bearing) {
    return (int) Math.round(bearing.degrees()) % 360;
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
