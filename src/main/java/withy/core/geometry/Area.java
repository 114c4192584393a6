package withy.core.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A part of the plane: what lies inside an odd number of its rings, so that a ring inside another
 * is a hole.
 *
 * @param rings each of three corners or more, the first not repeated
 */
public record Area(List<List<Position>> rings) {
  /**
   * @throws IllegalArgumentException if there is no ring or one of fewer than three corners
   */
  public Area {
    rings = rings.stream().map(List::copyOf).toList();
    if (rings.isEmpty() || rings.stream().anyMatch(ring -> ring.size() < 3)) {
      throw new IllegalArgumentException("an area has rings of three corners or more");
    }
  }

  /**
   * Where a line from west to east enters and leaves the area, from the west: x of the first entry,
   * of the first exit and so on.
   */
  public List<Double> crossings(double y) {
    List<Double> crossings = new ArrayList<>();
    for (List<Position> ring : rings) {
      Position from = ring.get(ring.size() - 1);
      for (Position to : ring) {
        if ((from.y() > y) != (to.y() > y)) {
          double share = (y - from.y()) / (to.y() - from.y());
          crossings.add(from.x() + share * (to.x() - from.x()));
        }
        from = to;
      }
    }
    Collections.sort(crossings);
    return crossings;
  }

  /** Whether a place lies in it; one on the rim may. */
  public boolean contains(Position place) {
    boolean inside = false;
    for (double x : crossings(place.y())) {
      inside ^= x > place.x();
    }
    return inside;
  }
}
