package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.item.Item;
import withy.core.item.Passage;
import withy.core.scenario.Sailing;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Sailed;
import withy.core.waterway.Waterway;

/**
 * The chart of a passage, its marks numbered in the order in which the boat meets them: without
 * depths while the rules are asked, with all there is and the tracks afterwards.
 */
final class PassageChart {
  /** Metres that are shown beside the marks and the track. */
  private static final double BESIDE = 130;

  private final Item item;
  private final Passage passage;
  private final Sailing sailing;

  private PassageChart(Item item, Passage passage, Sailing sailing) {
    this.item = item;
    this.passage = passage;
    this.sailing = sailing;
  }

  /** Land, marks and the boat. */
  static Svg asked(Item item, Passage passage, Sailing sailing, Lettering lettering) {
    PassageChart chart = new PassageChart(item, passage, sailing);
    return chart.drawn(chart.options().withoutDepths(), lettering);
  }

  /**
   * The safe track, and that of an answer up to where the keel touches.
   *
   * @param wrong the word of the answer; null where none was wrong
   */
  static Svg answered(
      Item item, Passage passage, Sailing sailing, @Nullable String wrong, Lettering lettering) {
    PassageChart chart = new PassageChart(item, passage, sailing);
    ChartOptions options = chart.options().with(passage.way().track(), true);
    return chart.drawn(
        wrong == null ? options : chart.sailed(options, passage.track(wrong)), lettering);
  }

  private ChartOptions options() {
    return ChartOptions.plain()
        .with(sailing.boat(), item.scenario().situation().heading())
        .meeting(met());
  }

  private List<Position> met() {
    return passage.legs().stream()
        .map(each -> sailing.marks().get(each.mark()).position())
        .toList();
  }

  private ChartOptions sailed(ChartOptions options, Polyline track) {
    Sailed sailed = sailing.water().sail(track, sailing.keel());
    return sailed
        .ground()
        .map(
            where ->
                options.with(track.until(where), false).touching(where, sailing.keel().draught()))
        .orElseGet(() -> options.with(track, false));
  }

  private Svg drawn(ChartOptions options, Lettering lettering) {
    List<Position> shown = new ArrayList<>(met());
    shown.addAll(passage.way().track().points());
    double west = Double.POSITIVE_INFINITY;
    double south = Double.POSITIVE_INFINITY;
    double east = Double.NEGATIVE_INFINITY;
    double north = Double.NEGATIVE_INFINITY;
    for (Position each : shown) {
      west = Math.min(west, each.x());
      east = Math.max(east, each.x());
      south = Math.min(south, each.y());
      north = Math.max(north, each.y());
    }
    Position middle = new Position((west + east) / 2, (south + north) / 2);
    double reach = Math.max(east - west, north - south) / 2 + BESIDE;
    return ChartDrawing.of(
        whole(sailing.water().around(middle, reach), middle, reach * 0.9), lettering, options);
  }

  /** Without those of the other marks that the frame would cut. */
  private Waterway whole(Waterway water, Position middle, double reach) {
    List<PlacedMark> marks = new ArrayList<>(water.marks());
    marks.removeIf(
        each ->
            !met().contains(each.position())
                && Math.max(
                        Math.abs(each.position().x() - middle.x()),
                        Math.abs(each.position().y() - middle.y()))
                    > reach);
    return new Waterway(water.depths(), water.tide(), water.fairways(), water.dangers(), marks);
  }
}
