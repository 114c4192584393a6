package withy.drawing;

import java.util.List;
import withy.core.light.LightCharacter;
import withy.core.waterway.PlacedMark;

/**
 * The lights of a chart at night, each a small disc at its rhythm whose size in CSS pixels does not
 * grow with the chart. The more there are, the smaller each, so that all together may flash.
 */
final class ChartLights {
  /** The greatest radius of a disc with its soft edge, in CSS pixels. */
  private static final double LARGEST = 8;

  private ChartLights() {}

  static double radius(int lights) {
    return Math.min(LARGEST, FlashSafety.radius(lights));
  }

  static void draw(SvgWriter svg, List<PlacedMark> marks, ChartSheet sheet) {
    int lights = (int) marks.stream().filter(each -> each.appearance().light() != null).count();
    for (PlacedMark each : marks) {
      LightCharacter light = each.appearance().light();
      if (light != null) {
        LightDisc.dot(svg, light.timeline(), sheet.at(each.position()), radius(lights));
      }
    }
  }
}
