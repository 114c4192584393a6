package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;

/** Draws what lies over a chart on the wall. */
final class OverlayDrawing {
  private static final double CABLE = 185.2;
  private static final double BOAT = 0.62;
  private static final double RING = 11;
  private static final double DISC = 9;
  private static final double SIZE = 11;

  private final ChartSheet sheet;
  private final ChartInk ink;
  private final SvgWriter svg;

  OverlayDrawing(ChartSheet sheet, ChartInk ink) {
    this.sheet = sheet;
    this.ink = ink;
    this.svg = SvgWriter.window(sheet.area());
  }

  Svg draw(Overlay overlay, Lettering lettering) {
    scale(lettering);
    if (overlay.way() != null) {
      List<List<Vec>> parts = sheet.inside(sheet.at(overlay.way()));
      Pen.dashed(svg, ChartTracks.path(parts), ink.words(), 0.9, "1.5 4");
    }
    missing(overlay.missing());
    overlay.counts().forEach(this::count);
    ring(overlay.ring());
    boat(overlay.boat());
    cross(overlay.cross());
    return svg.finish();
  }

  /** How long a cable is, in the south-western corner. */
  private void scale(Lettering lettering) {
    double left = sheet.area().left() + 8;
    double y = sheet.area().bottom() - 9;
    double right = left + CABLE * sheet.scale();
    PathData bar = PathData.line(left, y, right, y).move(left, y - 3).line(left, y + 3);
    bar.move(right, y - 3).line(right, y + 3);
    Pen.line(svg, bar, ink.halo(), 4);
    Pen.line(svg, bar, ink.words(), 1.4);
    ChartWords.begin(svg, SIZE, ink.words(), ink.halo());
    ChartWords.write(svg, "1 " + lettering.cable(), right + 5, y + 4);
    svg.end();
  }

  private void missing(@Nullable Position mark) {
    if (mark != null) {
      Vec at = sheet.at(mark);
      Pen.circle(svg, at, RING, ink.paper(), ink.words(), 1.8);
      Pen.bold(svg, "?", at, 16, ink.words());
    }
  }

  private void ring(@Nullable Position mark) {
    begin("ring", mark);
    Vec middle = new Vec(0, -RING / 2);
    Pen.circle(svg, middle, RING * 1.2, "none", ink.words(), 1.4);
    svg.end();
  }

  /** Opens what the script moves; what has no place is hidden in the middle. */
  private void begin(String name, @Nullable Position place) {
    Vec at = place == null ? sheet.area().middle() : sheet.at(place);
    String where = "translate(" + SvgWriter.number(at.x()) + " " + SvgWriter.number(at.y()) + ")";
    String shown = place == null ? "hidden" : "visible";
    svg.begin("g", "class", name, "transform", where, "visibility", shown);
  }

  private void count(Overlay.Count count) {
    Vec at = sheet.at(count.at());
    Pen.circle(svg, at, DISC, ink.words(), ink.halo(), 1.6);
    Pen.bold(svg, count.number(), at, SIZE, ink.paper());
  }

  private void boat(ChartOptions.@Nullable Boat boat) {
    if (boat == null) {
      return;
    }
    svg.begin("g", "class", "boat", "transform", sheet.at(boat.at()).turned(boat.heading()));
    Pen.dashed(svg, PathData.line(0, -10, 0, -34), ink.words(), 1.2, "1.5 2.5");
    svg.begin("g", "transform", "scale(" + SvgWriter.number(BOAT) + ")");
    ChartDisc.hull(svg);
    svg.end().end();
  }

  private void cross(@Nullable Position place) {
    begin("cross", place);
    PathData arms = PathData.line(-12, 0, -3, 0).move(3, 0).line(12, 0);
    arms.move(0, -12).line(0, -3).move(0, 3).line(0, 12);
    Pen.line(svg, arms, ink.halo(), 4);
    Pen.line(svg, arms, ink.words(), 1.8);
    svg.end();
  }
}
