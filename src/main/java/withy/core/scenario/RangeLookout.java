package withy.core.scenario;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.light.Elevation;
import withy.core.light.Intensity;
import withy.core.light.LightCharacter;

/**
 * A light that the boat expects to raise; how far off depends on its height and power, on the eye
 * and on the air. All distances in nautical miles.
 *
 * @param light with its elevation and one nominal range
 * @param eye the height of the eye above the water, in the unit of the elevation
 * @param visibility of tonight; null where only the curve of the earth is asked about
 */
public record RangeLookout(LightCharacter light, Elevation eye, @Nullable Double visibility)
    implements Lookout {
  /** The nominal ranges of lights that the table of luminous ranges has a line for. */
  public static final List<Integer> NOMINAL_RANGES =
      List.of(3, 5, 7, 10, 12, 15, 18, 20, 22, 25, 28);

  /**
   * @throws IllegalArgumentException if the light states no elevation or not one range, the units
   *     differ, or the visibility is not above 0
   */
  public RangeLookout {
    if (light.elevation().isEmpty() || light.ranges().size() != 1) {
      throw new IllegalArgumentException(light.notation() + " states no elevation and range");
    }
    if (light.elevation().get().feet() != eye.feet()) {
      throw new IllegalArgumentException("light and eye are measured in different units");
    }
    if (visibility != null && !(visibility > 0)) {
      throw new IllegalArgumentException("a visibility of " + visibility + " M is not above 0");
    }
  }

  public Elevation elevation() {
    return light.elevation().orElseThrow();
  }

  public double nominalRange() {
    return light.ranges().get(0).miles().doubleValue();
  }

  /** How far off the light comes over the horizon. */
  public double geographicRange() {
    return elevation().geographicRange(eye);
  }

  /**
   * How far tonight's air lets the light through.
   *
   * @throws IllegalStateException if nothing is known of the air
   */
  public double luminousRange() {
    if (visibility == null) {
      throw new IllegalStateException("the visibility is not known");
    }
    return Intensity.ofNominalRange(nominalRange()).luminousRange(visibility);
  }

  /**
   * Some lines of the table for tonight's visibility, that of the light among them: luminous ranges
   * to a tenth of a mile by nominal range.
   */
  public SortedMap<Integer, Double> luminousTable() {
    SortedMap<Integer, Double> lines = new TreeMap<>();
    if (visibility != null) {
      int own = Math.max(1, NOMINAL_RANGES.indexOf((int) nominalRange()));
      int last = Math.min(own + 2, NOMINAL_RANGES.size());
      for (int each : NOMINAL_RANGES.subList(own - 1, last)) {
        double miles = Intensity.ofNominalRange(each).luminousRange(visibility);
        lines.put(each, Math.round(miles * 10) / 10.0);
      }
    }
    return lines;
  }

  /** How far off the light is seen tonight: the lesser of both ranges. */
  public double seenFrom() {
    return Math.min(geographicRange(), luminousRange());
  }
}
