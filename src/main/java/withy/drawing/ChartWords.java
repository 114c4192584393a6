package withy.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Words on a chart, with a thin edge in the colour of the ground that keeps lines off them. */
final class ChartWords {
  private ChartWords() {}

  /**
   * Opens a group of words.
   *
   * @param halo null where nothing runs under them
   */
  static void begin(
      SvgWriter svg, double size, Palette ink, @Nullable Palette halo, Object... style) {
    List<Object> attributes =
        new ArrayList<>(List.of("font-family", Type.FAMILY, "font-size", size, "fill", ink));
    if (halo != null) {
      attributes.addAll(List.of("stroke", halo, "stroke-width", 2, "stroke-opacity", 0.7));
      attributes.addAll(List.of("stroke-linejoin", "round", "paint-order", "stroke"));
    }
    attributes.addAll(List.of(style));
    svg.begin("g", attributes.toArray());
  }

  /** Writes words from the left edge of a box. */
  static void write(SvgWriter svg, String words, Box box, Object... style) {
    write(svg, words, box.left(), box.middle().y() + 3.9, style);
  }

  static void write(SvgWriter svg, String words, double x, double y, Object... style) {
    List<Object> attributes = new ArrayList<>(List.of("x", tenths(x), "y", tenths(y)));
    attributes.addAll(List.of(style));
    svg.text(words, attributes.toArray());
  }

  static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
