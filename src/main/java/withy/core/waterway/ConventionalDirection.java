package withy.core.waterway;

import java.util.Optional;
import withy.core.geometry.Bearing;
import withy.core.mark.Travel;

/**
 * The conventional direction of buoyage of a stretch of water, as the chart's arrow shows it.
 *
 * @param bearing the way the arrow points
 */
public record ConventionalDirection(Bearing bearing) {
  /** With lies within this angle of the arrow, in degrees; ours, no source. */
  public static final double WITH_LIMIT = 60;

  /** Against lies beyond this angle of the arrow, in degrees; ours, no source. */
  public static final double AGAINST_LIMIT = 120;

  /** How a heading lies to the arrow; empty across it, where no side can be told. */
  public Optional<Travel> travel(Bearing heading) {
    double angle = bearing.angleTo(heading);
    if (angle <= WITH_LIMIT) {
      return Optional.of(Travel.WITH);
    }
    return angle > AGAINST_LIMIT ? Optional.of(Travel.AGAINST) : Optional.empty();
  }
}
