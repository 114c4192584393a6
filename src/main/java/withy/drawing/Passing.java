package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Quadrant;

/**
 * The boat's way past a mark for an answer, as a plan shows it; it tells the side, not metres.
 *
 * @param ways one, or two where either side will do; each from the boat past the mark
 * @param foul the side of the mark where an answer has its danger, null where it names none
 * @param wide whether the danger lies all round the mark
 */
record Passing(List<List<Vec>> ways, @Nullable Vec foul, boolean wide) {
  private static final double OFF = 32;
  private static final double WIDE = 58;
  private static final double BEYOND = 50;
  private static final double DANGER = 23;

  Passing {
    ways = ways.stream().map(List::copyOf).toList();
  }

  /** How far the danger reaches: round the mark itself where the answer is to keep clear. */
  double foulRadius() {
    return wide ? WIDE - 20 : 15;
  }

  /** The same ways where neither side has a danger. */
  Passing without() {
    return new Passing(ways, null, false);
  }

  /** A way that ends where it meets this passing's danger, or goes on past it. */
  List<Vec> struckBy(List<Vec> way) {
    if (foul == null) {
      return way;
    }
    for (int i = 1; i < way.size(); i++) {
      if (way.get(i).minus(foul).length() < foulRadius()) {
        List<Vec> cut = new ArrayList<>(way.subList(0, i));
        cut.add(wide ? way.get(i) : foul);
        return cut;
      }
    }
    return way;
  }

  /** The way for the value of an answer; empty ways for a value that names no side. */
  static Passing of(String value, Vec boat, Vec mark, Bearing heading) {
    Bearing course = courseTo(boat, mark);
    return switch (value) {
      case "leave-to-port" -> beside(boat, mark, course, 1);
      case "leave-to-starboard" -> beside(boat, mark, course, -1);
      case "either-side" ->
          new Passing(
              List.of(past(boat, mark, course, OFF), past(boat, mark, course, -OFF)), null, false);
      case "keep-clear" -> new Passing(List.of(past(boat, mark, course, WIDE)), mark, true);
      case "pass-north" -> quarter(boat, mark, heading, Quadrant.NORTH);
      case "pass-east" -> quarter(boat, mark, heading, Quadrant.EAST);
      case "pass-south" -> quarter(boat, mark, heading, Quadrant.SOUTH);
      case "pass-west" -> quarter(boat, mark, heading, Quadrant.WEST);
      default -> new Passing(List.of(), null, false);
    };
  }

  private static Bearing courseTo(Vec boat, Vec mark) {
    Vec way = mark.minus(boat);
    return Bearing.of(StrictMath.toDegrees(StrictMath.atan2(way.x(), -way.y())));
  }

  private static Passing beside(Vec boat, Vec mark, Bearing course, int hand) {
    Vec danger = mark.plus(Vec.along(course.plus(90), -hand * DANGER));
    return new Passing(List.of(past(boat, mark, course, hand * OFF)), danger, false);
  }

  /** Past the mark on the right hand of the course, on the left if off is negative. */
  private static List<Vec> past(Vec boat, Vec mark, Bearing course, double off) {
    Vec abeam = mark.plus(Vec.along(course.plus(90), off));
    return List.of(boat, abeam, abeam.plus(Vec.along(course, BEYOND)));
  }

  /** Round to a quarter of the mark; straight on where that quarter lies beside the course. */
  private static Passing quarter(Vec boat, Vec mark, Bearing heading, Quadrant quadrant) {
    Bearing safe = quadrant.middle();
    Vec danger = mark.plus(Vec.along(safe.reciprocal(), DANGER));
    Vec clear = mark.plus(Vec.along(safe, OFF));
    double turn = safe.relativeTo(courseTo(boat, mark));
    Bearing across = safe.plus(turn < 0 ? 90 : -90);
    List<Vec> way = new ArrayList<>(List.of(boat));
    if (StrictMath.abs(turn) < 50) {
      way.add(mark.plus(Vec.along(across.reciprocal(), OFF)));
      way.add(clear);
      way.add(clear.plus(Vec.along(across, BEYOND * 0.8)));
    } else if (StrictMath.abs(turn) > 130) {
      way.add(clear.plus(Vec.along(safe, 2)));
      way.add(clear.plus(Vec.along(across, BEYOND)));
    } else {
      way.add(clear);
      way.add(clear.plus(Vec.along(across, BEYOND)));
    }
    return new Passing(List.of(way), danger, false);
  }

  /** A smooth line through the points of a way, leaving the boat on her heading. */
  static PathData smooth(List<Vec> way, Bearing heading) {
    PathData path = PathData.at(way.get(0).x(), way.get(0).y());
    for (int i = 1; i < way.size(); i++) {
      Vec from = way.get(i - 1);
      Vec to = way.get(i);
      double reach = to.minus(from).length() * 0.38;
      Vec leaving = i == 1 ? Vec.along(heading, reach) : unit(tangent(way, i - 1)).times(reach);
      Vec arriving = unit(tangent(way, i)).times(reach);
      Vec a = from.plus(leaving);
      Vec b = to.minus(arriving);
      path.cubic(a.x(), a.y(), b.x(), b.y(), to.x(), to.y());
    }
    return path;
  }

  /** The direction of a way at one of its points. */
  private static Vec tangent(List<Vec> way, int i) {
    return i == way.size() - 1
        ? way.get(i).minus(way.get(i - 1))
        : way.get(i + 1).minus(way.get(i - 1));
  }

  /** The direction in which a way ends. */
  static Vec end(List<Vec> way) {
    return unit(tangent(way, way.size() - 1));
  }

  private static Vec unit(Vec vec) {
    return vec.times(1 / Math.max(vec.length(), 1e-9));
  }
}
