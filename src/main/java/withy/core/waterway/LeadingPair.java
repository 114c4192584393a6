package withy.core.waterway;

import java.util.Optional;
import withy.core.geometry.Bearing;

/**
 * The two marks of a leading line as they bear from a boat. The front one is the lower and the
 * nearer to the channel, and so nearer to the boat whether she has them ahead or astern.
 *
 * @param front bearing of the front mark
 * @param rear bearing of the rear mark
 */
public record LeadingPair(Bearing front, Bearing rear) {
  /** The marks are in line up to this angle between them, in degrees; ours, no source. */
  public static final double IN_LINE_WITHIN = 0.3;

  /** The marks are out of line beyond this angle between them, in degrees; ours, no source. */
  public static final double OPEN_BEYOND = 1;

  /** How far right of the rear mark the front one is seen, in degrees; negative to the left. */
  public double opening() {
    return front.relativeTo(rear);
  }

  /** Whether a boat on a heading has them before her beam. */
  public boolean ahead(Bearing heading) {
    return front.angleTo(heading) < 90;
  }

  /**
   * To a thousandth of a degree, how to steer on a heading to come to the line or stay on it: ahead
   * towards the front mark, astern the other way. Empty where the marks are neither in line nor
   * clearly out of it.
   */
  public Optional<Steering> steering(Bearing heading) {
    double open = Math.round(StrictMath.abs(opening()) * 1000) / 1000.0;
    if (open <= IN_LINE_WITHIN) {
      return Optional.of(Steering.ON_THE_LINE);
    }
    return open > OPEN_BEYOND ? Optional.of(towardsTheLine(heading)) : Optional.empty();
  }

  private Steering towardsTheLine(Bearing heading) {
    boolean frontToTheLeft = opening() < 0;
    return frontToTheLeft == ahead(heading) ? Steering.STEER_PORT : Steering.STEER_STARBOARD;
  }
}
