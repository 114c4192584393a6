package withy.drawing;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Position;
import withy.core.light.LightCharacter;
import withy.core.waterway.PlacedMark;

/**
 * The lights of a chart at night, each a small disc at its rhythm whose size in CSS pixels does not
 * grow with the chart. No more of them flash than are safe together; those nearest to the boat do.
 */
final class ChartLights {
  /** Of a disc with its soft edge, in CSS pixels. */
  static final double RADIUS = 6.5;

  private ChartLights() {}

  /** How many of this size may flash at once. */
  static int most() {
    return (int) Math.floor(FlashSafety.litArea() / (StrictMath.PI * RADIUS * RADIUS));
  }

  static void draw(
      SvgWriter svg, List<PlacedMark> marks, ChartSheet sheet, @Nullable Position boat) {
    List<PlacedMark> lit =
        marks.stream()
            .filter(each -> each.appearance().light() != null)
            .sorted(
                Comparator.comparingDouble(
                    each -> boat == null ? 0 : boat.distanceTo(each.position())))
            .limit(most())
            .toList();
    for (PlacedMark each : lit) {
      LightCharacter light = each.appearance().light();
      if (light != null) {
        LightDisc.dot(svg, light.timeline(), sheet.at(each.position()), RADIUS);
      }
    }
  }
}
