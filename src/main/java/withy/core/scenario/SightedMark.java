package withy.core.scenario;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;

/**
 * A mark as the boat sees it.
 *
 * @param bearing from the boat
 * @param distance from the boat in metres, above 0
 * @param label the number or letter it bears, null where it bears none
 * @param lead the bearing that the chart gives the leading line it belongs to, null on all marks
 *     but leading ones
 */
public record SightedMark(
    MarkKind kind,
    Bearing bearing,
    double distance,
    @Nullable String label,
    Appearance appearance,
    @Nullable Bearing lead) {
  /** The letters on a private mark (SOR/99-335, section 4). */
  public static final String PRIVATE = "PRIV";

  public SightedMark {
    if (!(distance > 0)) {
      throw new IllegalArgumentException("distance " + distance + " m is not above 0");
    }
  }

  /**
   * The light that it shows.
   *
   * @throws IllegalStateException if it is unlit
   */
  public LightCharacter light() {
    @Nullable LightCharacter light = appearance.light();
    if (light == null) {
      throw new IllegalStateException("an unlit mark cannot be seen at night");
    }
    return light;
  }

  /** A mark that belongs to no leading line. */
  public SightedMark(
      MarkKind kind,
      Bearing bearing,
      double distance,
      @Nullable String label,
      Appearance appearance) {
    this(kind, bearing, distance, label, appearance, null);
  }
}
