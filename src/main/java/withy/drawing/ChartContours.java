package withy.drawing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import withy.core.geometry.Position;
import withy.core.waterway.Contours;
import withy.core.waterway.DepthField;

/** The contours of one chart, each level traced once however many draw it. */
final class ChartContours {
  /** Metres below datum of the contours that a chart shows, the coast apart. */
  static final List<Double> LEVELS = List.of(0.0, 2.0, 5.0, 10.0);

  private final DepthField field;
  private final Map<Double, List<List<Position>>> traced = new TreeMap<>();

  ChartContours(DepthField field) {
    this.field = field;
  }

  /** The rings round all that is shallower than a level. */
  List<List<Position>> shallowerThan(double level) {
    return traced.computeIfAbsent(level, each -> Contours.shallowerThan(field, each));
  }
}
