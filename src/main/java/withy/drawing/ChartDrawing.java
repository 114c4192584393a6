package withy.drawing;

import java.util.List;
import withy.core.geometry.Position;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A stretch of water as a chart, north up, after the common conventions of paper charts: soundings
 * and contours in metres below datum, shallow and drying tints, dangers, marks with their light
 * characters, leading lines, the direction of buoyage, a rose and a scale. No word or sounding
 * hides a mark; everything stands where the water alone puts it, whatever sails there.
 */
public final class ChartDrawing {
  private final Waterway water;
  private final ChartOptions options;
  private final ChartSheet sheet;
  private final ChartLayout layout;
  private final ChartInk ink;
  private final SvgWriter svg;

  private ChartDrawing(
      Waterway water, Lettering lettering, ChartOptions options, boolean bleeding) {
    this.water = water;
    this.options = options;
    this.sheet = ChartSheet.of(water.depths());
    this.layout = ChartLayout.of(water, sheet, options, lettering);
    this.ink = options.night() ? ChartInk.NIGHT : ChartInk.DAY;
    this.svg =
        bleeding ? SvgWriter.window(sheet.area()) : SvgWriter.scaled(sheet.width(), sheet.height());
  }

  /** The water and its marks alone, by day. */
  public static Svg of(Waterway water, Lettering lettering) {
    return of(water, lettering, ChartOptions.plain());
  }

  public static Svg of(Waterway water, Lettering lettering, ChartOptions options) {
    ChartDrawing drawing = new ChartDrawing(water, lettering, options, false);
    drawing.all(lettering);
    ChartScale.frame(drawing.svg, drawing.sheet, drawing.ink);
    ChartScale.draw(drawing.svg, drawing.sheet, lettering, drawing.ink);
    return drawing.svg.finish();
  }

  /** The same to the edges of the picture, without frame and scale. */
  static Svg bleeding(Waterway water, Lettering lettering, ChartOptions options) {
    ChartDrawing drawing = new ChartDrawing(water, lettering, options, true);
    drawing.all(lettering);
    return drawing.svg.finish();
  }

  private void all(Lettering lettering) {
    under();
    marks();
    words();
    letters();
    boats(lettering);
    layout.numbers().forEach(each -> ChartNumber.draw(svg, each, ink));
  }

  /** The ground, and what words and marks may stand on. */
  private void under() {
    ChartContours contours = new ChartContours(sheet.field());
    ChartGround.draw(svg, sheet, contours, options, ink);
    for (ChartLines.Leading each : layout.leading()) {
      each.draw(svg, ink);
    }
    ChartRose.draw(svg, layout.compass(), ink);
    layout.arrowsOfBuoyage().forEach(each -> each.draw(svg, ink));
    layout.shownDangers().forEach(each -> layout.dangers().draw(svg, each, contours, ink));
    options.ways().stream().filter(each -> !each.safe()).forEach(this::way);
    options.ways().stream().filter(ChartOptions.Way::safe).forEach(this::way);
    for (ChartLayout.Labelled each : layout.labels()) {
      if (!each.leader().isEmpty()) {
        Pen.line(svg, ChartTracks.path(List.of(each.leader())), ink.faint(), 0.6);
      }
    }
    Soundings.draw(svg, layout.soundings(), ink, !options.ways().isEmpty());
    Position asked = options.asked();
    if (asked != null && sheet.area().contains(sheet.at(asked))) {
      ChartTracks.ring(svg, sheet.at(asked), ink);
    }
  }

  private void way(ChartOptions.Way way) {
    List<List<Vec>> parts = sheet.inside(sheet.at(way.line()));
    if (!parts.isEmpty() && way.letter() != null) {
      ChartTracks.lettered(svg, parts, ink);
    } else if (!parts.isEmpty()) {
      ChartTracks.way(svg, parts, way.safe(), ink);
      if (way.safe()) {
        ChartTracks.head(svg, parts.get(parts.size() - 1), ink);
      }
    }
  }

  private void marks() {
    for (PlacedMark each : water.marks()) {
      ChartSymbol symbol = new ChartSymbol(each.appearance());
      if (options.night()) {
        symbol.place(svg, sheet.at(each.position()), ink);
      } else {
        symbol.draw(svg, sheet.at(each.position()), ink.compass());
      }
    }
    if (options.night()) {
      ChartLights.draw(svg, water.marks(), sheet);
    }
  }

  private void words() {
    ChartWords.begin(svg, ChartLabel.SIZE, ink.words(), ink.halo());
    for (ChartLayout.Labelled each : layout.labels()) {
      each.label().draw(svg, each.box(), each.sign());
    }
    for (ChartLayout.Note each : layout.bearings()) {
      ChartWords.write(svg, each.words(), each.box());
    }
    for (ChartLayout.Note each : layout.bars()) {
      ChartWords.write(svg, each.words(), each.box(), "font-style", "italic");
    }
    svg.end();
    Soundings.depths(svg, layout.depths(), ink);
  }

  /** The letters of the ways, where they end or leave the sheet. */
  private void letters() {
    for (ChartOptions.Way each : options.ways()) {
      List<List<Vec>> parts = sheet.inside(sheet.at(each.line()));
      if (!parts.isEmpty() && each.letter() != null && !each.letter().isEmpty()) {
        List<Vec> last = parts.get(parts.size() - 1);
        ChartTracks.letter(svg, each.letter(), last.get(last.size() - 1), sheet.area(), ink);
      }
    }
  }

  private void boats(Lettering lettering) {
    ChartOptions.Boat boat = options.boat();
    if (boat != null && sheet.area().contains(sheet.at(boat.at()))) {
      ChartTracks.boat(svg, sheet.at(boat.at()), boat.heading(), ink);
    }
    layout.soundings().forEach(each -> layout.room().take(each.box()));
    for (ChartOptions.Touch each : options.touches()) {
      Vec at = sheet.at(each.at());
      if (sheet.area().contains(at)) {
        ChartTracks.cross(svg, at, ink);
        String words = lettering.metres(Math.floor(each.water() * 10) / 10);
        double width = Type.width(words, ChartLabel.SIZE + 1, true);
        List<Box> places = ChartLabel.places(ChartTracks.touch(at), width, ChartLabel.LINE);
        Box box = layout.room().taken(places, 0);
        ChartWords.begin(svg, ChartLabel.SIZE + 1, ink.words(), ink.halo());
        ChartWords.write(svg, words, box, "font-weight", 700);
        svg.end();
      }
    }
  }
}
