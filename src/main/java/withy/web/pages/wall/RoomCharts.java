package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Polyline;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.scenario.Sailing;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Sailed;
import withy.core.waterway.Waterway;
import withy.drawing.ChartOptions;
import withy.drawing.Lettering;
import withy.drawing.Overlay;
import withy.drawing.WallChart;
import withy.usecase.PutToRoom.Room;
import withy.usecase.PutToRoom.Tally;

/** Draws an item in a room: the answers as tracks on the chart, how many chose each beside it. */
final class RoomCharts {
  /** Metres on every side of the mark that are shown, so that tracks lie apart. */
  private static final double REACH = 400;

  private RoomCharts() {}

  static WallChart chart(Room room, Sailing sailing) {
    Item item = room.item();
    PlacedMark mark = sailing.marks().get(0);
    Waterway water = sailing.water().around(mark.position(), REACH);
    boolean rules = item.form() != Form.CHART_OVER_RULE && !room.isRevealed();
    ChartOptions plain = ChartOptions.plain();
    Overlay over =
        Overlay.NONE
            .with(sailing.boat(), item.scenario().situation().heading())
            .round(mark.position());
    if (!room.isRevealed()) {
      return WallChart.of(water, rules ? plain.withoutDepths() : plain, over, Lettering.ENGLISH);
    }
    ChartOptions options = plain;
    for (Tally each : shownTracks(room)) {
      Option option = item.option(Objects.requireNonNull(each.option()));
      boolean safe = option.value().equals(item.key());
      Polyline track = Objects.requireNonNull(option.way()).track();
      Sailed sailed = sailing.water().sail(track, sailing.keel());
      options = safe ? options.with(track, true) : astray(options, sailing, track, sailed);
      over = over.with(count(each, track, mark));
    }
    return WallChart.of(water, options, over, Lettering.ENGLISH);
  }

  /** The right one, and every other that somebody chose. */
  private static List<Tally> shownTracks(Room room) {
    List<Tally> shown = new ArrayList<>();
    for (Tally each : room.tallies()) {
      @Nullable String option = each.option();
      if (option != null && (each.times() > 0 || option.equals(room.item().key()))) {
        shown.add(each);
      }
    }
    return shown;
  }

  private static ChartOptions astray(
      ChartOptions options, Sailing sailing, Polyline track, Sailed sailed) {
    ChartOptions drawn = options.with(sailedPart(track, sailed), false);
    return sailed
        .ground()
        .map(where -> drawn.touching(where, sailing.water().water(where)))
        .orElse(drawn);
  }

  private static Polyline sailedPart(Polyline track, Sailed sailed) {
    return sailed.ground().map(track::until).orElse(track);
  }

  /** Beside the mark, on the side that was chosen: there the tracks lie apart. */
  private static Overlay.Count count(Tally tally, Polyline track, PlacedMark mark) {
    double abeam = track.foot(mark.position()).along();
    return new Overlay.Count(track.at(abeam), Integer.toString(tally.times()));
  }
}
