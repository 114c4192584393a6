package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.DangerKind;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * Where everything on a chart stands that has a choice. It follows from the water alone, so that
 * nothing jumps when boats sail over it.
 */
final class ChartLayout {
  private static final double CLEAR = 2;

  /** Units from a sign to words that need a leader to it. */
  private static final double FAR = 26;

  /** The words beside a mark, in a box beside the sign. */
  record Labelled(ChartLabel label, Box box, Vec sign) {
    /** The way from the words to a sign so far off that they could seem another's; else none. */
    List<Vec> leader() {
      Vec edge =
          new Vec(
              Math.min(Math.max(sign.x(), box.left()), box.right()),
              Math.min(Math.max(sign.y(), box.top()), box.bottom()));
      return edge.minus(sign).length() > FAR ? List.of(edge, sign) : List.of();
    }
  }

  /** The bearing of a leading line, or the word beside a bar. */
  record Note(String words, Box box) {}

  private final Waterway water;
  private final ChartSheet sheet;
  private final ChartOptions options;
  private final ChartRoom room;
  private final ChartDangers dangers;
  private final List<Labelled> labels = new ArrayList<>();
  private final List<ChartNumber> numbers = new ArrayList<>();
  private final List<Soundings.Sounding> depths = new ArrayList<>();
  private final List<ChartLines.Leading> leading;
  private final List<Note> bearings = new ArrayList<>();
  private final List<Note> bars = new ArrayList<>();
  private final List<ChartLines.Arrow> arrows = new ArrayList<>();
  private Vec rose = new Vec(0, 0);
  private List<Soundings.Sounding> soundings = List.of();

  private ChartLayout(Waterway water, ChartSheet sheet, ChartOptions options) {
    this.water = water;
    this.options = options;
    this.sheet = sheet;
    this.room = new ChartRoom(sheet.area().grown(-2));
    this.dangers = new ChartDangers(sheet, water);
    this.leading = ChartLines.leading(water, sheet);
  }

  static ChartLayout of(
      Waterway water, ChartSheet sheet, ChartOptions options, Lettering lettering) {
    ChartLayout layout = new ChartLayout(water, sheet, options);
    layout.signs();
    options.met().forEach(layout::number);
    if (options.labels()) {
      water.marks().forEach(layout::label);
    }
    layout.shownDangers().forEach(layout::depth);
    layout.bars(lettering);
    layout.leading.forEach(layout::bearing);
    layout.arrows();
    layout.rose = layout.room.taken(ChartRose.places(sheet.area()), 0).middle();
    if (options.depths()) {
      layout.soundings = Soundings.of(water, sheet, layout.room);
    }
    return layout;
  }

  private void signs() {
    water.marks().forEach(each -> room.take(sign(each)));
    shownDangers().forEach(each -> room.take(dangers.box(each)));
    leading.forEach(each -> room.line(each.line()));
    for (Fairway each : water.fairways()) {
      room.channel(sheet.at(each.line()), each.width() * sheet.scale());
    }
  }

  /** The room of a mark's symbol. */
  Box sign(PlacedMark mark) {
    return new ChartSymbol(mark.appearance()).box().moved(sheet.at(mark.position()));
  }

  private void label(PlacedMark mark) {
    ChartLabel label = ChartLabel.of(mark);
    Box sign = sign(mark);
    Box box = room.taken(label.places(sign), 2 * CLEAR);
    labels.add(new Labelled(label, box, sign.middle()));
  }

  /** Those that the chart shows; none where it tells no depths. */
  List<Danger> shownDangers() {
    return options.depths() ? dangers.shown() : List.of();
  }

  /** Beside the symbol of the mark at a place, the next of the numbers. */
  private void number(Position place) {
    Box symbol =
        water.marks().stream()
            .filter(each -> each.position().equals(place))
            .findFirst()
            .map(this::sign)
            .orElseGet(() -> Box.around(sheet.at(place), 1, 1));
    List<Box> places = ChartLabel.places(symbol, ChartNumber.WIDTH, ChartNumber.WIDTH);
    numbers.add(new ChartNumber(numbers.size() + 1, room.taken(places, CLEAR).middle()));
  }

  private void depth(Danger danger) {
    SoundingText text = SoundingText.of(danger.leastDepth());
    if (danger.kind() == DangerKind.SHOAL) {
      takeDepth(new Soundings.Sounding(text, sheet.at(danger.at())));
      return;
    }
    Box size = text.box(new Vec(0, 0), Soundings.SIZE);
    List<Box> places = ChartLabel.places(dangers.box(danger), size.width(), size.height());
    takeDepth(new Soundings.Sounding(text, room.best(places).middle()));
  }

  /** What each sill is called, and the least depth over it. */
  private void bars(Lettering lettering) {
    for (Danger each : options.depths() ? water.dangers() : List.<Danger>of()) {
      if (each.kind() == DangerKind.BAR && sheet.area().contains(sheet.at(each.at()))) {
        String words = lettering.bar() + " " + lettering.metres(each.leastDepth());
        double width = Type.width(words, ChartLabel.SIZE, false);
        Box over = Box.around(sheet.at(each.at()), 14, 14);
        List<Box> places = ChartLabel.places(over, width, ChartLabel.LINE);
        bars.add(new Note(words, room.taken(places, CLEAR)));
      }
    }
  }

  private void takeDepth(Soundings.Sounding depth) {
    depths.add(depth);
    room.take(depth.box().grown(CLEAR));
  }

  private void bearing(ChartLines.Leading line) {
    if (line.line().isEmpty()) {
      return;
    }
    String words = Lettering.figures(line.bearing()) + "\u00b0";
    double width = Type.width(words, ChartLabel.SIZE, false);
    List<Box> places = new ArrayList<>();
    Vec from = line.line().get(0);
    Vec leg = line.line().get(1).minus(from);
    for (int share = 10; share >= 4; share--) {
      Vec at = from.plus(leg.times(share / 12.0));
      Box on = Box.around(at, 6, 6);
      places.addAll(ChartLabel.places(on, width, ChartLabel.LINE).subList(0, 12));
    }
    bearings.add(new Note(words, room.taken(places, CLEAR)));
  }

  private void arrows() {
    for (Fairway each : water.fairways()) {
      ChartLines.Arrow arrow = ChartLines.arrow(each, water, sheet, room);
      arrows.add(arrow);
      room.take(arrow.box().grown(CLEAR));
    }
  }

  List<Labelled> labels() {
    return labels;
  }

  List<ChartNumber> numbers() {
    return numbers;
  }

  List<Soundings.Sounding> depths() {
    return depths;
  }

  List<ChartLines.Leading> leading() {
    return leading;
  }

  List<Note> bearings() {
    return bearings;
  }

  List<Note> bars() {
    return bars;
  }

  List<ChartLines.Arrow> arrowsOfBuoyage() {
    return arrows;
  }

  /** The middle of the rose. */
  Vec compass() {
    return rose;
  }

  List<Soundings.Sounding> soundings() {
    return soundings;
  }

  ChartRoom room() {
    return room;
  }

  ChartDangers dangers() {
    return dangers;
  }
}
