package withy.web.pages.wall;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Item;
import withy.core.item.Option;
import withy.core.item.Way;
import withy.core.scenario.Sailing;
import withy.drawing.Svg;
import withy.drawing.WallChart;
import withy.usecase.AskAgain.Change;
import withy.usecase.PutToRoom.Room;
import withy.usecase.PutToRoom.Tally;
import withy.web.pages.ItemPictures;
import withy.web.pages.Link;
import withy.wording.ItemWording;
import withy.wording.Wording;

/** Puts an item in a room into words and pictures: answers without names. */
final class RoomViews {
  private final Wording wording;
  private final ItemWording words;
  private final ItemPictures pictures;
  private final ChangeWords changes;

  RoomViews(Wording wording) {
    this.wording = wording;
    this.words = new ItemWording(wording);
    this.pictures = new ItemPictures(wording);
    this.changes = new ChangeWords(wording);
  }

  /**
   * @param change since the class was last asked such a question; null before it was shown the
   *     answer
   */
  RoomView view(Room room, Shown shown, @Nullable Change change) {
    Item item = room.item();
    @Nullable Sailing sailing = charted(item);
    @Nullable WallChart chart = sailing == null ? null : RoomCharts.chart(room, sailing);
    String path = path(room);
    return new RoomView(
        chart == null ? null : chart.chart().named(text("page.wall.room-chart")),
        chart == null ? null : chart.over(),
        chart == null ? pictures(room) : List.of(),
        words.prompt(item),
        String.join(" · ", words.facts(item)),
        path + "/count",
        answered(room),
        room.isRevealed(),
        shown.address(path + "/reveal").toString(),
        room.tallies().stream().map(each -> row(item, each)).toList(),
        words.explanation(item),
        change == null ? List.of() : changes.sentences(change),
        shown.address(path + "/like").toString(),
        ways(room, shown, sailing != null),
        Link.to(text("page.wall.refresh"), shown.address(path)));
  }

  /** What is sailed where the answers can be drawn as tracks on a chart; null where not. */
  private static @Nullable Sailing charted(Item item) {
    boolean sailed = item.options().stream().allMatch(each -> each.way() != null);
    return sailed ? item.scenario().sailing() : null;
  }

  private List<Svg> pictures(Room room) {
    List<Svg> asked = pictures.asked(room.item());
    return asked.isEmpty() && room.isRevealed() ? List.of(pictures.small(room.item())) : asked;
  }

  private List<Link> ways(Room room, Shown shown, boolean isCharted) {
    Link review =
        Link.to(
            text("page.wall.to-review"), "/classes/" + room.assignment().schoolClass() + "/review");
    return isCharted
        ? List.of(Link.to(text("page.wall.to-water"), shown.address()), review)
        : List.of(review);
  }

  static String path(Room room) {
    return Shown.PATH + "/room/" + room.assignment().id();
  }

  String answered(Room room) {
    return text("page.wall.answered", room.answered(), room.learners());
  }

  private AnswerRow row(Item item, Tally tally) {
    String value = tally.option();
    if (value == null) {
      return new AnswerRow(text("page.wall.not-sure"), tally.times(), false, null);
    }
    Option option = item.option(value);
    return new AnswerRow(
        words.option(option), tally.times(), value.equals(item.key()), sailed(item, option.way()));
  }

  private @Nullable String sailed(Item item, @Nullable Way way) {
    Sailing sailing = item.scenario().sailing();
    if (sailing == null || way == null) {
      return null;
    }
    if (!sailing.keel().grounds(way.leastDepth())) {
      return text("page.wall.least-on-way", PlaceWords.metres(way.leastDepth()));
    }
    return way.leastDepth() > 0
        ? text("page.wall.touches-on-way", PlaceWords.metres(way.leastDepth()))
        : text("page.wall.dries-on-way");
  }

  private String text(String key, Object... arguments) {
    return wording.text(key, arguments);
  }
}
