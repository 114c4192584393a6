package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import withy.core.geometry.Position;
import withy.core.scenario.Sailing;
import withy.core.scenario.SightedMark;
import withy.core.waterway.DepthField;
import withy.core.waterway.PlacedMark;

/**
 * What must hold of an item set in a stretch of water, worked out from its depths alone: the marks
 * in sight are those that stand there, and of all tracks that of the key alone keeps the keel off.
 */
final class SailedTruth {
  private final Sailing sailing;

  SailedTruth(Sailing sailing) {
    this.sailing = sailing;
  }

  static void holdsOf(Item item, Sailing sailing) {
    SailedTruth truth = new SailedTruth(sailing);
    truth.marksStandThere(item.scenario().marks());
    SightedMark asked = item.scenario().mark();
    assertThat(asked.bearing().angleTo(item.scenario().situation().heading()))
        .isLessThanOrEqualTo(25);
    for (Option each : item.options()) {
      Way way = Objects.requireNonNull(each.way(), () -> each + " is not sailed");
      double least = truth.least(way.track().points());
      assertThat(way.track().points())
          .as("track of %s", item)
          .allMatch(sailing.water().depths()::contains);
      if (each.value().startsWith("leave-to-")) {
        assertThat(each.value())
            .as("track of %s", item)
            .isEqualTo("leave-to-" + truth.hand(way.track().points()));
      } else if (each.value().startsWith("pass-")) {
        assertThat(truth.passes(way.track().points(), each.value())).as("%s", item).isTrue();
      }
      assertThat(least).isCloseTo(way.leastDepth(), within(0.05));
      if (each.value().equals(item.key())) {
        assertThat(way.leastDepth())
            .as("%s of %s", each, item)
            .isGreaterThanOrEqualTo(sailing.keel().draught() + sailing.keel().margin());
      } else if (way.fault() == null) {
        assertThat(way.leastDepth())
            .as("%s of %s", each, item)
            .isLessThan(sailing.keel().draught());
      }
    }
  }

  /** The least water along a way, worked out anew. */
  static double least(Sailing sailing, Way way) {
    return new SailedTruth(sailing).least(way.track().points());
  }

  /** The hand on which a track leaves the mark where it comes nearest to it. */
  private String hand(List<Position> track) {
    Position mark = sailing.marks().get(0).position();
    double best = Double.POSITIVE_INFINITY;
    double left = 0;
    for (int leg = 1; leg < track.size(); leg++) {
      Position from = track.get(leg - 1);
      double dx = track.get(leg).x() - from.x();
      double dy = track.get(leg).y() - from.y();
      double px = mark.x() - from.x();
      double py = mark.y() - from.y();
      double share =
          StrictMath.min(1, StrictMath.max(0, (px * dx + py * dy) / (dx * dx + dy * dy)));
      double off = StrictMath.hypot(px - share * dx, py - share * dy);
      left = off < best ? dx * py - dy * px : left;
      best = StrictMath.min(best, off);
    }
    return left > 0 ? "port" : "starboard";
  }

  /** Whether a track goes by a place within the quadrant of a mark that it says. */
  private boolean passes(List<Position> track, String value) {
    Position mark = sailing.marks().get(0).position();
    int quadrant = List.of("pass-north", "pass-east", "pass-south", "pass-west").indexOf(value);
    return track.stream()
        .filter(each -> StrictMath.hypot(each.x() - mark.x(), each.y() - mark.y()) < 100)
        .anyMatch(
            each -> {
              double bearing =
                  StrictMath.toDegrees(StrictMath.atan2(each.x() - mark.x(), each.y() - mark.y()));
              double off = StrictMath.abs((bearing - 90 * quadrant + 540) % 360 - 180);
              return off <= 45;
            });
  }

  void marksStandThere(List<SightedMark> sighted) {
    assertThat(sighted).hasSameSizeAs(sailing.marks());
    for (int i = 0; i < sighted.size(); i++) {
      PlacedMark placed = sailing.marks().get(i);
      Position boat = sailing.boat();
      double east = placed.position().x() - boat.x();
      double north = placed.position().y() - boat.y();
      assertThat(sighted.get(i).distance()).isCloseTo(StrictMath.hypot(east, north), within(0.11));
      double bearing = StrictMath.toDegrees(StrictMath.atan2(east, north));
      double off = StrictMath.abs(bearing - sighted.get(i).bearing().degrees()) % 360;
      assertThat(StrictMath.min(off, 360 - off)).isLessThanOrEqualTo(0.51);
      assertThat(sighted.get(i).kind()).isEqualTo(placed.kind());
      assertThat(sighted.get(i).appearance()).isEqualTo(placed.appearance());
    }
  }

  /**
   * Along the straight legs in steps of a quarter of a metre, by bilinear depths, the tide added.
   */
  double least(List<Position> track) {
    double least = Double.POSITIVE_INFINITY;
    for (int leg = 1; leg < track.size(); leg++) {
      Position from = track.get(leg - 1);
      Position to = track.get(leg);
      double length = StrictMath.hypot(to.x() - from.x(), to.y() - from.y());
      for (double gone = 0; gone <= length; gone += 0.25) {
        double share = gone / length;
        double x = from.x() * (1 - share) + to.x() * share;
        double y = from.y() * (1 - share) + to.y() * share;
        least = StrictMath.min(least, depth(x, y) + sailing.water().tide());
      }
      least = StrictMath.min(least, depth(to.x(), to.y()) + sailing.water().tide());
    }
    return least;
  }

  private double depth(double x, double y) {
    DepthField field = sailing.water().depths();
    double column = clamp((x - field.origin().x()) / field.cell(), field.columns() - 1);
    double row = clamp((y - field.origin().y()) / field.cell(), field.rows() - 1);
    double sum = 0;
    for (int i = (int) column; i <= Math.min((int) column + 1, field.columns() - 1); i++) {
      for (int j = (int) row; j <= Math.min((int) row + 1, field.rows() - 1); j++) {
        sum += field.depth(i, j) * (1 - StrictMath.abs(column - i)) * (1 - StrictMath.abs(row - j));
      }
    }
    return sum;
  }

  private static double clamp(double value, int most) {
    return StrictMath.max(0, StrictMath.min(value, most));
  }
}
