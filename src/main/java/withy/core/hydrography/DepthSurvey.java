package withy.core.hydrography;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Area;
import withy.core.geometry.Position;
import withy.core.waterway.Danger;
import withy.core.waterway.Fairway;

/**
 * What a survey says of the depths of a water; {@link SurveyedDepths} makes a field of it.
 *
 * @param areas of which a later one lies over an earlier one
 * @param land what no tide covers; it lies over all areas
 */
public record DepthSurvey(
    List<DepthArea> areas,
    List<Area> land,
    List<Sounding> soundings,
    List<Dredged> fairways,
    List<Danger> dangers) {
  public DepthSurvey {
    areas = List.copyOf(areas);
    land = List.copyOf(land);
    soundings = List.copyOf(soundings);
    fairways = List.copyOf(fairways);
    dangers = List.copyOf(dangers);
  }

  /**
   * Water between two depths.
   *
   * @param least metres below datum, negative for what dries
   * @param most metres below datum, above the least
   */
  public record DepthArea(Area area, double least, double most) {
    /**
     * @throws IllegalArgumentException if the range is none
     */
    public DepthArea {
      if (!(least < most)) {
        throw new IllegalArgumentException(least + " to " + most + " m is no range of depths");
      }
    }
  }

  /**
   * A depth that was measured.
   *
   * @param depth metres below datum, negative for what dries
   */
  public record Sounding(Position at, double depth) {}

  /**
   * A fairway and the depth to which it is kept.
   *
   * @param depth metres below datum; null where none is stated
   */
  public record Dredged(Fairway fairway, @Nullable Double depth) {}
}
