package withy.core.waterway;

import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * Water that is marked for vessels to keep in.
 *
 * @param id lower-case words joined by hyphens, unique in its water
 * @param line its middle, in the conventional direction of buoyage
 * @param width metres from edge to edge, above 0
 */
public record Fairway(String id, Polyline line, double width) {
  public Fairway {
    if (!id.matches("[a-z]+(-[a-z]+)*") || !(width > 0)) {
      throw new IllegalArgumentException("'" + id + "', " + width + " m wide, is no fairway");
    }
  }

  /** Whether a place lies between its edges. */
  public boolean contains(Position place) {
    return line.foot(place).distance() <= width / 2;
  }

  /** The conventional direction of buoyage beside a place. */
  public ConventionalDirection direction(Position place) {
    return new ConventionalDirection(line.bearingAt(line.foot(place).along()));
  }
}
