package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Way;
import withy.core.scenario.Sailing;
import withy.core.waterway.Sailed;

/** The chart of an answered item: the safe track, and the track of the answer till she touches. */
final class SailedChart {
  /** Metres on every side of the mark that are shown. */
  private static final double REACH = 420;

  private final Sailing sailing;

  private SailedChart(Sailing sailing) {
    this.sailing = sailing;
  }

  /**
   * @param wrong the value whose track is dashed; null where none was chosen wrongly
   */
  static Svg of(Item item, Sailing sailing, @Nullable String wrong, Lettering lettering) {
    Bearing heading = item.scenario().situation().heading();
    ChartOptions plain = ChartOptions.plain().with(sailing.boat(), heading);
    Position mark = sailing.marks().get(0).position();
    return ChartDrawing.of(
        sailing.water().around(mark, REACH), lettering, tracks(plain, item, sailing, wrong));
  }

  /** With the safe track, and dashed that of a wrong answer till the keel touches. */
  static ChartOptions tracks(
      ChartOptions plain, Item item, Sailing sailing, @Nullable String wrong) {
    SailedChart chart = new SailedChart(sailing);
    ChartOptions options = plain;
    for (Option each : item.options()) {
      Way way = each.way();
      if (way != null && each.value().equals(item.key())) {
        options = options.with(way.track(), true);
      } else if (way != null && each.value().equals(wrong)) {
        options = chart.sailed(options, way.track());
      }
    }
    return options;
  }

  private ChartOptions sailed(ChartOptions options, Polyline track) {
    Sailed sailed = sailing.water().sail(track, sailing.keel());
    return sailed
        .ground()
        .map(
            where ->
                options
                    .with(track.until(where), false)
                    .touching(where, sailing.water().water(where)))
        .orElseGet(() -> options.with(track, false));
  }
}
