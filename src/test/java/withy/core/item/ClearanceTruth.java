package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import withy.core.geometry.Position;
import withy.core.scenario.Clearance;
import withy.core.scenario.Sailing;
import withy.core.waterway.Danger;

/**
 * Of items about clearance, by the depths and the distances along straight legs: of all tracks one
 * alone keeps the keel off and its distance; or the distance of the one that is drawn.
 */
final class ClearanceTruth {
  private static final double METRES_IN_CABLE = 1852 / 10.0;

  private final Item item;
  private final Sailing sailing;
  private final Clearance drawn;
  private final Position mark;

  private ClearanceTruth(Item item) {
    this.item = item;
    this.sailing = Objects.requireNonNull(item.scenario().sailing());
    this.drawn = Objects.requireNonNull(sailing.clearance());
    this.mark = sailing.marks().get(0).position();
  }

  static String key(Item item) {
    ClearanceTruth truth = new ClearanceTruth(item);
    return item.options().isEmpty() ? truth.number() : truth.track();
  }

  private String track() {
    List<String> clear = new ArrayList<>();
    List<String> letters = new ArrayList<>();
    for (Option each : item.options()) {
      letters.add(each.value());
      Way way = Objects.requireNonNull(each.way());
      double least = SailedTruth.least(sailing, way);
      double off = off(way.track().points());
      boolean wide = off >= drawn.cables() * METRES_IN_CABLE;
      if (least >= 1.9 && wide) {
        clear.add(each.value());
      } else if (least >= 1.4) {
        assertThat(way.fault()).as("%s of %s", each, item).isEqualTo(Fault.TOO_CLOSE);
        assertThat(off).isLessThan(drawn.cables() * METRES_IN_CABLE - 20);
      } else {
        assertThat(way.fault()).as("%s of %s", each, item).isNull();
      }
    }
    assertThat(letters).isSorted().first().isEqualTo("track-a");
    assertThat(clear).as("clear tracks of %s", item).hasSize(1);
    return clear.get(0);
  }

  /** Of the nearest danger and of its mark. */
  private double off(List<Position> track) {
    double off = off(track, mark);
    for (Danger each : sailing.water().dangers()) {
      off = StrictMath.min(off, off(track, each.at()));
    }
    return off;
  }

  private String number() {
    Position target = mark;
    for (Danger each : sailing.water().dangers()) {
      boolean sign = each.kind().name().equals("ROCK") || each.kind().name().equals("WRECK");
      boolean beside = StrictMath.hypot(each.at().x() - mark.x(), each.at().y() - mark.y()) < 400;
      target = sign && beside ? each.at() : target;
    }
    double cables = off(drawn.tracks().get(0).line().points(), target) / METRES_IN_CABLE;
    assertThat(SailedTruth.least(sailing, new Way(drawn.tracks().get(0).line(), 0)))
        .isGreaterThanOrEqualTo(1.9);
    return String.format(Locale.ROOT, "%.1f", cables).replace(".0", "");
  }

  /** Metres from the nearest of all legs. */
  private static double off(List<Position> track, Position place) {
    double least = Double.POSITIVE_INFINITY;
    for (int leg = 1; leg < track.size(); leg++) {
      Position from = track.get(leg - 1);
      double dx = track.get(leg).x() - from.x();
      double dy = track.get(leg).y() - from.y();
      double px = place.x() - from.x();
      double py = place.y() - from.y();
      double share = (px * dx + py * dy) / (dx * dx + dy * dy);
      share = StrictMath.max(0, StrictMath.min(1, share));
      least = StrictMath.min(least, StrictMath.hypot(px - share * dx, py - share * dy));
    }
    return least;
  }
}
