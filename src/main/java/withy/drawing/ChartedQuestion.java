package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.waterway.Waterway;

/** The chart of an item in which soundings decide: it is shown before the answer as well. */
final class ChartedQuestion {
  /** Metres that are shown beyond boat and mark, and on every side at least. */
  private static final double BEYOND = 130;

  private static final double LEAST = 330;

  private static final List<Form> FORMS = List.of(Form.CHART_OVER_RULE);

  private final Item item;
  private final Sailing sailing;

  private ChartedQuestion(Item item, Sailing sailing) {
    this.item = item;
    this.sailing = sailing;
  }

  static boolean isAsked(Form form) {
    return FORMS.contains(form);
  }

  /** The boat and the mark that is asked about, and the tracks if one is to be chosen. */
  static Svg question(Item item, Sailing sailing, Lettering lettering) {
    ChartedQuestion chart = new ChartedQuestion(item, sailing);
    return ChartDrawing.of(chart.part(), lettering, chart.plain());
  }

  /**
   * The same with the safe track.
   *
   * @param wrong the value whose track is dashed; null where none was chosen wrongly
   */
  static Svg answered(Item item, Sailing sailing, @Nullable String wrong, Lettering lettering) {
    ChartedQuestion chart = new ChartedQuestion(item, sailing);
    ChartOptions options = SailedChart.tracks(chart.plain(), item, sailing, wrong);
    return ChartDrawing.of(chart.part(), lettering, options);
  }

  private ChartOptions plain() {
    Scenario scenario = item.scenario();
    return ChartOptions.plain()
        .with(sailing.boat(), scenario.situation().heading())
        .asking(sailing.marks().get(0).position());
  }

  private Waterway part() {
    Position boat = sailing.boat();
    Position mark = sailing.marks().get(0).position();
    Position middle = new Position((boat.x() + mark.x()) / 2, (boat.y() + mark.y()) / 2);
    return sailing.water().around(middle, Math.max(LEAST, boat.distanceTo(mark) / 2 + BEYOND));
  }
}
