package withy.drawing;

import java.util.List;

/**
 * The colours of a chart.
 *
 * @param depths the tints from the deep water up: deep, below five metres, below two, drying, land
 * @param lines of the contours, of the drying line and of the coast
 * @param faint soundings
 * @param compass what lies over the water without being in it: rose, arrows, flares
 * @param halo round words, so that lines do not run into them
 */
record ChartInk(
    Palette paper,
    List<Palette> depths,
    Palette line,
    Palette coast,
    Palette words,
    Palette faint,
    Palette compass,
    Palette halo) {
  static final ChartInk DAY =
      new ChartInk(
          Palette.PAPER,
          List.of(
              Palette.CHART_DEEP,
              Palette.CHART_SHELVING,
              Palette.CHART_SHALLOW,
              Palette.CHART_DRYING,
              Palette.LAND),
          Palette.CHART_LINE,
          Palette.INK,
          Palette.INK,
          Palette.SECOND_INK,
          Palette.CHART_PLUM,
          Palette.CHART_DEEP);

  static final ChartInk NIGHT =
      new ChartInk(
          Palette.NIGHT,
          List.of(
              Palette.NIGHT,
              Palette.NIGHT_SHELVING,
              Palette.NIGHT_SHALLOW,
              Palette.NIGHT_DRYING,
              Palette.NIGHT_SHORE),
          Palette.NIGHT_LINE,
          Palette.NIGHT_FAINT,
          Palette.NIGHT_INK,
          Palette.NIGHT_FAINT,
          Palette.NIGHT_FAINT,
          Palette.NIGHT);

  ChartInk {
    depths = List.copyOf(depths);
  }
}
