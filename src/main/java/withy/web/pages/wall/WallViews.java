package withy.web.pages.wall;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.hydrography.Blueprint;
import withy.core.hydrography.DrawnWaters;
import withy.core.hydrography.DrawnWaters.Drawn;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Voyage;
import withy.drawing.ChartOptions;
import withy.drawing.Lettering;
import withy.drawing.Overlay;
import withy.drawing.WallChart;
import withy.web.pages.Link;
import withy.wording.Wording;

/** Puts a stretch of water into words and pictures for the wall. */
final class WallViews {
  /** Those that a class is led through; channels side by side are asked about, not shown. */
  private static final Set<Blueprint> CHOSEN_FROM =
      EnumSet.complementOf(EnumSet.of(Blueprint.NEIGHBOURING_CHANNELS));

  private final Wording wording;
  private final WallCalls calls;
  private final PlaceWords places;
  private final VoyageData data;

  WallViews(Wording wording) {
    this.wording = wording;
    this.calls = new WallCalls(wording);
    this.places = new PlaceWords(wording);
    this.data = new VoyageData(wording);
  }

  WallView view(Stretch stretch, List<SurveyedWater> surveyed, RoomForm room) {
    Shown shown = stretch.shown();
    WallChart chart = chart(stretch);
    int place = stretch.place();
    CallView said = calls.said(stretch, place);
    return new WallView(
        title(stretch),
        chart.chart().named(text("page.wall.chart", title(stretch))),
        chart.over(),
        data.of(stretch, chart, calls, room.sides()),
        shown.address(Shown.PATH + "/place").toString(),
        shown.night(),
        said,
        travel(stretch.voyage()),
        values(stretch),
        Link.to(text("page.wall.back"), shown.step(Math.max(0, place - 1)).address()),
        Link.to(text("page.wall.on"), shown.step(Math.min(stretch.last(), place + 1)).address()),
        choices(stretch),
        kinds(shown, surveyed),
        Link.to(text("page.wall.another"), shown.in(another(shown)).address()),
        marks(stretch),
        away(stretch),
        shown.at() == null ? null : looked(stretch, shown.at()),
        room);
  }

  String title(Stretch stretch) {
    return DrawnWaters.named(stretch.survey().id())
        .map(each -> text("page.wall.drawn", kind(each.blueprint()), each.number()))
        .orElse(stretch.survey().title());
  }

  private WallChart chart(Stretch stretch) {
    Shown shown = stretch.shown();
    Voyage.Fix fix = stretch.step().fix();
    ChartOptions plain = ChartOptions.plain();
    Overlay over =
        Overlay.NONE
            .along(stretch.voyage().track())
            .with(fix.at(), fix.heading())
            .looking(shown.at())
            .without(stretch.untold().map(PlacedMark::position).orElse(null))
            .round(calls.ringed(stretch, stretch.place()));
    return WallChart.of(
        stretch.drawn(), shown.night() ? plain.atNight() : plain, over, Lettering.ENGLISH);
  }

  private String travel(Voyage voyage) {
    return switch (voyage.travel()) {
      case WITH -> text("page.wall.with");
      case AGAINST -> text("page.wall.against");
      case NONE -> text("page.wall.none");
    };
  }

  private List<ValueRow> values(Stretch stretch) {
    Voyage.Fix fix = stretch.step().fix();
    return List.of(
        new ValueRow(
            "heading", text("page.wall.heading"), text("page.wall.degrees", fix.heading())),
        new ValueRow("water-here", text("page.wall.water"), data.metres(fix.water())),
        new ValueRow("least", text("page.wall.least"), data.metres(fix.least())));
  }

  private List<Choices> choices(Stretch stretch) {
    Shown shown = stretch.shown();
    List<Choices> choices = new ArrayList<>();
    choices.add(
        new Choices(
            text("page.wall.region"),
            Practice.values().stream()
                .map(each -> choice(practice(each), shown.by(each), each.equals(shown.practice())))
                .toList(),
            true));
    boolean open = stretch.water().fairways().isEmpty();
    String in = text(open ? "page.wall.clockwise" : "page.wall.inbound");
    String out = text(open ? "page.wall.anticlockwise" : "page.wall.outbound");
    choices.add(
        new Choices(
            text("page.wall.way"),
            List.of(
                choice(in, shown.sailing(true), shown.inbound()),
                choice(out, shown.sailing(false), !shown.inbound())),
            false));
    choices.add(
        new Choices(
            text("page.wall.light"),
            List.of(
                choice(text("page.wall.day"), shown.atNight(false), !shown.night()),
                choice(text("page.wall.night"), shown.atNight(true), shown.night())),
            true));
    goals(stretch).ifPresent(choices::add);
    return choices;
  }

  /** Where there is more than one fairway to sail. */
  private Optional<Choices> goals(Stretch stretch) {
    List<Fairway> fairways = stretch.water().fairways();
    if (fairways.size() < 2) {
      return Optional.empty();
    }
    Shown shown = stretch.shown();
    String chosen = shown.goal().isEmpty() ? fairways.get(0).id() : shown.goal();
    return Optional.of(
        new Choices(
            text("page.wall.goal"),
            fairways.stream()
                .map(each -> choice(goal(each), shown.to(each.id()), each.id().equals(chosen)))
                .toList(),
            false));
  }

  private String goal(Fairway fairway) {
    return switch (fairway.id()) {
      case "main" -> text("page.wall.main");
      case "secondary" -> text("page.wall.secondary");
      default -> text("page.wall.other");
    };
  }

  private static Link choice(String words, Shown shown, boolean chosen) {
    return new Link(words, shown.address().toString(), chosen);
  }

  private String practice(Practice practice) {
    return switch (practice.id()) {
      case "iala-a" -> text("page.wall.region-a");
      case "iala-b" -> text("page.wall.region-b");
      case "canada" -> text("page.wall.canada");
      case "usa" -> text("page.wall.usa");
      default -> wording.name(practice);
    };
  }

  private List<Link> kinds(Shown shown, List<SurveyedWater> surveyed) {
    Optional<Drawn> now = DrawnWaters.named(shown.water());
    List<Link> kinds = new ArrayList<>();
    for (SurveyedWater each : surveyed) {
      kinds.add(choice(each.title(), shown.in(each.id()), each.id().equals(shown.water())));
    }
    for (Blueprint each : CHOSEN_FROM) {
      boolean chosen = now.filter(drawn -> drawn.blueprint() == each).isPresent();
      kinds.add(choice(kind(each), shown.in(DrawnWaters.id(each, 1)), chosen));
    }
    return kinds;
  }

  private String kind(Blueprint blueprint) {
    return switch (blueprint) {
      case HARBOUR_ENTRANCE -> text("page.wall.harbour-entrance");
      case RIVER -> text("page.wall.river");
      case ESTUARY -> text("page.wall.estuary");
      case FORK -> text("page.wall.fork");
      case CONVERGING -> text("page.wall.converging");
      case NEIGHBOURING_CHANNELS -> text("page.wall.neighbouring-channels");
      case OFFSHORE_SHOAL -> text("page.wall.offshore-shoal");
      case ISOLATED_ROCK -> text("page.wall.isolated-rock");
      case COASTAL_PASSAGE -> text("page.wall.coastal-passage");
    };
  }

  private static String another(Shown shown) {
    return DrawnWaters.named(shown.water())
        .map(Drawn::next)
        .map(Drawn::id)
        .orElse(DrawnWaters.id(Blueprint.RIVER, 1));
  }

  private List<Link> marks(Stretch stretch) {
    MarkCalls words = calls.marks(stretch);
    List<Link> marks = new ArrayList<>();
    for (int i = 0; i < stretch.water().marks().size(); i++) {
      PlacedMark mark = stretch.water().marks().get(i);
      marks.add(Link.to(words.plain(mark), stretch.shown().without(i).address()));
    }
    return marks;
  }

  private @Nullable AwayView away(Stretch stretch) {
    Shown shown = stretch.shown();
    return stretch
        .away()
        .map(
            mark ->
                new AwayView(
                    shown.told()
                        ? null
                        : Link.to(text("page.wall.tell"), shown.telling().address()),
                    shown.told() ? calls.told(stretch, mark) : null,
                    Link.to(text("page.wall.put-back"), shown.withAllMarks().address())))
        .orElse(null);
  }

  /** What a place is; a mark that the class is asked about stays untold. */
  PlaceView looked(Stretch stretch, Position place) {
    List<String> words = new ArrayList<>(places.of(stretch.drawn(), place));
    Optional<PlacedMark> mark = PlaceWords.mark(stretch.drawn(), place);
    mark.ifPresent(each -> words.add(0, calls.marks(stretch).name(each)));
    return new PlaceView(words, mark.map(each -> take(stretch, each)).orElse(null));
  }

  private Link take(Stretch stretch, PlacedMark mark) {
    int index = stretch.water().marks().indexOf(mark);
    return Link.to(text("page.wall.take"), stretch.shown().without(index).address());
  }

  private String text(String key, Object... arguments) {
    return wording.text(key, arguments);
  }
}
