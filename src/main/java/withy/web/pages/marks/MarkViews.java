package withy.web.pages.marks;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.drawing.Svg;
import withy.web.pages.Address;
import withy.web.pages.Link;
import withy.wording.Wording;

/** Puts the marks of practices into words and pictures. */
final class MarkViews {
  static final String PATH = "/marks";
  static final String REGIONS = "/regions";

  /** In rows and columns lights are drawn as small as two side by side; ours, no source. */
  private static final int IN_ROWS = 2;

  private static final List<MarkKind> BY_REGION =
      List.of(
          MarkKind.PORT_HAND,
          MarkKind.STARBOARD_HAND,
          MarkKind.PREFERRED_CHANNEL_TO_STARBOARD,
          MarkKind.PREFERRED_CHANNEL_TO_PORT);

  private final Wording wording;
  private final MarkWords words;

  MarkViews(Wording wording) {
    this.wording = wording;
    this.words = new MarkWords(wording);
  }

  PracticesView practices(boolean missing) {
    Showing day = new Showing(Sight.DAY, false, false, false);
    List<MarkCard> cards = new ArrayList<>();
    for (Practice each : Practice.values()) {
      List<Svg> pictures = new ArrayList<>();
      each.marks().stream()
          .limit(2)
          .forEach(mark -> pictures.addAll(MarkPictures.of(each, mark, day, 1)));
      String note = wording.text("page.marks.how-many", each.marks().size(), each.region());
      cards.add(new MarkCard(wording.name(each), path(each), pictures, note));
    }
    return new PracticesView(missing, cards);
  }

  /** All marks of a practice, as its page has them. */
  MarksView marks(Practice practice, Showing showing) {
    return marks(practice, showing, path(practice), showing.sight() == Sight.NIGHT);
  }

  /** The same as its poster has them: each with its light, also by day. */
  MarksView poster(Practice practice, Showing showing) {
    return marks(practice, showing, path(practice) + "/poster", true);
  }

  private MarksView marks(Practice practice, Showing showing, String path, boolean lights) {
    return new MarksView(
        wording.name(practice),
        showing.wall(),
        showing.still(),
        showing.sight() == Sight.NIGHT,
        showing.sights(path, wording),
        showing.switches(path, wording),
        Practice.values().stream().map(each -> link(each, showing, each.equals(practice))).toList(),
        Link.to(wording.text("page.marks.poster"), showing.address(path(practice) + "/poster")),
        groups(practice, showing, lights),
        words.notes(practice));
  }

  private Link link(Practice practice, Showing showing, boolean current) {
    return new Link(wording.name(practice), showing.address(path(practice)), current);
  }

  private List<CardGroup> groups(Practice practice, Showing showing, boolean lights) {
    Map<MarkGroup, List<MarkCard>> byGroup = new EnumMap<>(MarkGroup.class);
    for (MarkDescription each : practice.marks()) {
      byGroup
          .computeIfAbsent(each.group(), any -> new ArrayList<>())
          .add(card(practice, each, showing, lights));
    }
    List<CardGroup> groups = new ArrayList<>();
    byGroup.forEach(
        (group, cards) -> groups.add(new CardGroup(group.id(), wording.name(group), cards)));
    return groups;
  }

  private MarkCard card(Practice practice, MarkDescription mark, Showing showing, boolean light) {
    return new MarkCard(
        words.name(mark),
        showing.address(path(practice, mark)),
        MarkPictures.of(practice, mark, showing, IN_ROWS),
        light ? words.firstLight(mark) : "");
  }

  /** The marks in the order in which the page of the practice shows them. */
  private static List<MarkDescription> inOrder(Practice practice) {
    List<MarkDescription> marks = new ArrayList<>(practice.marks());
    marks.sort((one, other) -> one.group().compareTo(other.group()));
    return marks;
  }

  MarkView mark(Practice practice, MarkDescription mark, Showing showing) {
    String path = path(practice, mark);
    List<MarkDescription> all = inOrder(practice);
    int place = all.indexOf(mark);
    return new MarkView(
        words.name(mark),
        wording.name(practice),
        wording.name(mark.group()),
        showing.wall(),
        showing.still(),
        showing.sight() == Sight.NIGHT,
        showing.sights(path, wording),
        showing.switches(path, wording),
        Link.to(
            wording.text("page.mark.all", wording.name(practice)), showing.address(path(practice))),
        named(mark, MarkPictures.of(practice, mark, showing, 1), showing),
        caption(mark, showing),
        wording.text(mark.meaningKey()),
        wording.name(mark.demand()),
        words.facts(mark),
        lights(mark),
        shapes(practice, mark),
        words.mistakes(practice, mark),
        words.sources(mark),
        neighbour(practice, all, place - 1, showing),
        neighbour(practice, all, place + 1, showing));
  }

  private String caption(MarkDescription mark, Showing showing) {
    if (showing.torch() && mark.look().retroreflectors().isEmpty()) {
      return wording.text("page.mark.sheeting-unknown");
    }
    return showing.sight() == Sight.NIGHT ? words.firstLight(mark) : "";
  }

  /** The first of the pictures bears the name; a strip beside it stays without. */
  private List<Svg> named(MarkDescription mark, List<Svg> pictures, Showing showing) {
    List<Svg> named = new ArrayList<>(pictures);
    String sight = showing.torch() ? "torch" : showing.sight().id();
    String text = wording.text("mark-picture." + sight, wording.text(mark.nameKey()));
    named.set(0, pictures.get(0).named(text));
    return named;
  }

  private List<MarkCard> lights(MarkDescription mark) {
    List<MarkCard> cards = new ArrayList<>();
    for (LightCharacter each : mark.look().lights()) {
      String character = each.shortNotation();
      String bench = Address.of("/lights").with("a", character).toString();
      cards.add(new MarkCard(character, bench, List.of(MarkPictures.strip(each)), ""));
    }
    return cards;
  }

  private List<MarkCard> shapes(Practice practice, MarkDescription mark) {
    List<MarkCard> cards = new ArrayList<>();
    for (Appearance each : mark.look().appearances(null)) {
      Svg picture = MarkPictures.shape(practice, mark, each);
      cards.add(new MarkCard(words.shape(each, mark.look()), "", List.of(picture), ""));
    }
    return cards.size() < 2 ? List.of() : cards;
  }

  private @Nullable Link neighbour(
      Practice practice, List<MarkDescription> all, int place, Showing showing) {
    if (place < 0 || place >= all.size()) {
      return null;
    }
    MarkDescription mark = all.get(place);
    return Link.to(words.name(mark), showing.address(path(practice, mark)));
  }

  RegionsView regions(Showing showing) {
    return new RegionsView(
        showing.wall(),
        showing.still(),
        showing.sight() == Sight.NIGHT,
        showing.sights(REGIONS, wording),
        showing.switches(REGIONS, wording),
        regional(Practice.IALA_A, showing),
        regional(Practice.IALA_B, showing));
  }

  private List<MarkCard> regional(Practice practice, Showing showing) {
    boolean light = showing.sight() == Sight.NIGHT;
    return BY_REGION.stream()
        .map(kind -> card(practice, practice.mark(kind).orElseThrow(), showing, light))
        .toList();
  }

  /** The address of the page of a practice. */
  static String path(Practice practice) {
    return PATH + "/" + practice.id();
  }

  static String path(Practice practice, MarkDescription mark) {
    return path(practice) + "/" + mark.id();
  }
}
