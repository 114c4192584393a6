package withy.core.hydrography;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Chance;
import withy.core.mark.Practice;
import withy.core.waterway.Danger;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;
import withy.core.waterway.PlacedMark;
import withy.core.waterway.Waterway;

/**
 * A stretch of water that somebody surveyed or thought out, in place of one that is drawn. It
 * belongs to no region: a practice dresses its marks.
 *
 * @param id by which drill sets and scripts name it: lower-case letters, digits and hyphens
 * @param title by which people name it
 * @param tide metres that the water stands above chart datum
 * @param fairways the main one first; none in open water
 * @param marks none need be ones that every practice has
 */
public record SurveyedWater(
    String id,
    String title,
    DepthField depths,
    double tide,
    List<Fairway> fairways,
    List<Danger> dangers,
    List<SurveyedMark> marks) {
  /**
   * @throws IllegalArgumentException if the id is none, two fairways have one id, or a mark serves
   *     none of them
   */
  public SurveyedWater {
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("'" + id + "' cannot be the id of a water");
    }
    fairways = List.copyOf(fairways);
    dangers = List.copyOf(dangers);
    marks = List.copyOf(marks);
    Waterway bare = new Waterway(depths, tide, fairways, dangers, List.of());
    for (SurveyedMark each : marks) {
      @Nullable String serves = each.serves();
      if (serves != null && bare.fairway(serves).isEmpty()) {
        throw new IllegalArgumentException("a mark serves " + serves + ", no fairway of " + id);
      }
    }
  }

  /**
   * The water with its marks as a practice has them, in the order in which they were surveyed:
   *
   * <ul>
   *   <li>a mark keeps its kind, and takes the colours, topmark and light of the practice's region;
   *       numbers follow the colour, red even and green odd;
   *   <li>a light keeps its rhythm where the practice allows it, else the mark shows the practice's
   *       most usual one;
   *   <li>a mark of national practice that the practice lacks becomes a special mark, any other
   *       that it lacks is left out;
   *   <li>a danger whose cardinal marks are left out bears an isolated-danger mark.
   * </ul>
   *
   * @param chance of what the survey leaves open: bodies and topmarks
   */
  public Waterway marked(Practice practice, Chance chance) {
    List<PlacedMark> dressed = new Dressing(practice, chance).of(this);
    return new Waterway(depths, tide, fairways, dangers, dressed);
  }
}
