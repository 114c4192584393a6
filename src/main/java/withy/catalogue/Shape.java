package withy.catalogue;

import java.util.List;
import withy.core.geometry.Geodetic;

/**
 * The geometry of a feature.
 *
 * @param type as RFC 7946 names it
 * @param parts points, lines or rings, each a list of places; a ring's first is not repeated
 * @param heights third coordinates of the points, NaN where there is none; empty for all others
 */
record Shape(Type type, List<List<Geodetic>> parts, List<Double> heights) {
  /** The types that features here have. */
  enum Type {
    POINT("Point"),
    MULTI_POINT("MultiPoint"),
    LINE_STRING("LineString"),
    POLYGON("Polygon"),
    MULTI_POLYGON("MultiPolygon");

    private final String word;

    Type(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  Shape {
    parts = parts.stream().map(List::copyOf).toList();
    heights = List.copyOf(heights);
  }
}
