package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.scenario.Clearance;
import withy.core.scenario.PlottedTrack;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.waterway.Waterway;

/** The chart of an item in which soundings decide: it is shown before the answer as well. */
final class ChartedQuestion {
  /** Metres that are shown beyond boat and mark, and on every side at least. */
  private static final double BEYOND = 130;

  private static final double RIM = 30;
  private static final double LEAST = 330;

  private static final List<Form> FORMS = List.of(Form.CLEARANCE, Form.CHART_OVER_RULE);

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
    return ChartDrawing.of(chart.part(), lettering, chart.lettered(chart.plain()));
  }

  /**
   * The same with the safe track.
   *
   * @param wrong the value whose track is dashed; null where none was chosen wrongly
   */
  static Svg answered(Item item, Sailing sailing, @Nullable String wrong, Lettering lettering) {
    ChartedQuestion chart = new ChartedQuestion(item, sailing);
    boolean choice = !item.options().isEmpty();
    ChartOptions options =
        choice
            ? SailedChart.tracks(chart.plain(), item, sailing, wrong)
            : chart.lettered(chart.plain());
    return ChartDrawing.of(chart.part(), lettering, options);
  }

  private ChartOptions plain() {
    Scenario scenario = item.scenario();
    return ChartOptions.plain()
        .with(sailing.boat(), scenario.situation().heading())
        .asking(sailing.marks().get(0).position());
  }

  /** The tracks past a danger; one alone needs no letter. */
  private ChartOptions lettered(ChartOptions plain) {
    @Nullable Clearance drawn = sailing.clearance();
    if (drawn == null) {
      return plain;
    }
    ChartOptions options = plain;
    for (PlottedTrack each : drawn.tracks()) {
      String letter = drawn.tracks().size() > 1 ? each.letter() : "";
      options = options.with(each.line(), letter);
    }
    return options;
  }

  private Waterway part() {
    @Nullable Clearance drawn = sailing.clearance();
    return drawn == null ? beforeMark() : round(drawn);
  }

  /** The mark, the danger and the tracks. */
  private Waterway round(Clearance drawn) {
    Position mark = drawn.mark().position();
    double reach = LEAST;
    for (PlottedTrack each : drawn.tracks()) {
      for (Position place : each.line().points()) {
        double east = Math.abs(place.x() - mark.x());
        reach = Math.max(reach, Math.max(east, Math.abs(place.y() - mark.y())) + RIM);
      }
    }
    return sailing.water().around(mark, reach);
  }

  private Waterway beforeMark() {
    Position boat = sailing.boat();
    Position mark = sailing.marks().get(0).position();
    Position middle = new Position((boat.x() + mark.x()) / 2, (boat.y() + mark.y()) / 2);
    return sailing.water().around(middle, Math.max(LEAST, boat.distanceTo(mark) / 2 + BEYOND));
  }
}
