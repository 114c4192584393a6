package withy.drawing;

import withy.core.waterway.Waterway;

/**
 * A chart that fills the wall of a room to its edges, and over it a second picture of the same size
 * with what moves there.
 *
 * @param chart the water
 * @param over what lies over it: the boat, her way, a cross, what is asked; a script finds the boat
 *     by the class {@code boat}, the cross by {@code cross}, the ring round the mark that is called
 *     by {@code ring}
 * @param scale units of both pictures in a metre
 * @param left units at the western edge of the field
 * @param bottom units at its southern edge, counted downwards
 */
public record WallChart(Svg chart, Svg over, double scale, double left, double bottom) {

  /**
   * Draws both.
   *
   * @param options of the chart; a boat is drawn over it, not in it
   */
  public static WallChart of(
      Waterway water, ChartOptions options, Overlay overlay, Lettering lettering) {
    ChartSheet sheet = ChartSheet.of(water.depths());
    ChartInk ink = options.night() ? ChartInk.NIGHT : ChartInk.DAY;
    return new WallChart(
        ChartDrawing.bleeding(water, lettering, options),
        new OverlayDrawing(sheet, ink).draw(overlay, lettering),
        sheet.scale(),
        sheet.area().left() - sheet.scale() * water.depths().origin().x(),
        sheet.area().bottom() + sheet.scale() * water.depths().origin().y());
  }
}
