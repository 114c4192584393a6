package withy.core.waterway;

import withy.core.geometry.Bearing;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;

/**
 * Two marks ashore that, kept in line, lead along a straight reach.
 *
 * @param front the lower mark, nearer to the water
 * @param rear the higher one behind it
 * @param from the seaward end of the reach that is to be followed
 * @param until where a boat that comes in leaves the line; beyond it the line is not to be followed
 */
public record LeadingLine(Position front, Position rear, Position from, Position until) {
  /** Degrees by which the reach may lie off the line of the marks; ours, no source. */
  private static final double WITHIN = 0.3;

  /**
   * @throws IllegalArgumentException if the marks do not lie in line ahead of one who follows it
   */
  public LeadingLine {
    Bearing line = front.bearingTo(rear);
    if (front.equals(rear)
        || line.angleTo(from.bearingTo(until)) > WITHIN
        || line.angleTo(until.bearingTo(front)) > WITHIN) {
      throw new IllegalArgumentException("marks at " + front + " and " + rear + " do not lead in");
    }
  }

  /** The bearing of the marks in line, from seaward. */
  public Bearing bearing() {
    return front.bearingTo(rear);
  }

  /** The reach that is to be followed, inwards. */
  public Polyline followed() {
    return Polyline.of(from, until);
  }
}
