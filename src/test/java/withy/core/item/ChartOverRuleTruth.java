package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import withy.core.geometry.Position;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;

/**
 * Of items in which the chart overrules the mark: the mark serves another channel than the boat's,
 * its colour by itself gives one side, the depths along the tracks give the other.
 */
final class ChartOverRuleTruth {
  private final Item item;
  private final Sailing sailing;
  private final PlacedMark mark;

  private ChartOverRuleTruth(Item item) {
    this.item = item;
    this.sailing = Objects.requireNonNull(item.scenario().sailing());
    this.mark = sailing.marks().get(0);
  }

  /**
   * The side on which the depths keep the keel off, after it was made sure that the rule says
   * otherwise.
   *
   * @param byColour the side that the colour of the mark gives for the boat's travel
   */
  static String side(Item item, String byColour) {
    ChartOverRuleTruth truth = new ChartOverRuleTruth(item);
    truth.boatLiesInAnotherChannel();
    String deep = truth.deep();
    assertThat(deep).as("the rule against the depths of %s", item).isNotEqualTo(byColour);
    assertThat(item.option(byColour).misconception()).isEqualTo(Misconception.RULE_OVER_CHART);
    return deep;
  }

  private String deep() {
    List<String> deep = new ArrayList<>();
    for (Option each : item.options()) {
      if (SailedTruth.least(sailing, way(each)) >= 1.9) {
        deep.add(each.value());
      }
    }
    assertThat(deep).as("deep tracks of %s", item).hasSize(1);
    return deep.get(0);
  }

  private void boatLiesInAnotherChannel() {
    Scenario scenario = item.scenario();
    List<String> around = new ArrayList<>();
    for (Fairway each : sailing.water().fairways()) {
      if (nearest(each.line().points(), sailing.boat()) < each.width() / 2) {
        around.add(each.id());
      }
    }
    assertThat(around).as("fairways round the boat of %s", scenario).isNotEmpty();
    assertThat(mark.serves()).isNotNull().isNotIn(around);
  }

  /** Metres from a line to a place, by small steps along it. */
  private static double nearest(List<Position> line, Position place) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int leg = 1; leg < line.size(); leg++) {
      for (int step = 0; step <= 100; step++) {
        double x =
            line.get(leg - 1).x() + step / 100.0 * (line.get(leg).x() - line.get(leg - 1).x());
        double y =
            line.get(leg - 1).y() + step / 100.0 * (line.get(leg).y() - line.get(leg - 1).y());
        nearest = StrictMath.min(nearest, StrictMath.hypot(place.x() - x, place.y() - y));
      }
    }
    return nearest;
  }

  private static Way way(Option option) {
    return Objects.requireNonNull(option.way());
  }
}
