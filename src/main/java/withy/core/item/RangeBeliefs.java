package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.light.Elevation;
import withy.core.scenario.RangeLookout;

/**
 * How far off beliefs expect to see a light, in nautical miles; null where a belief says nothing of
 * what is asked.
 */
final class RangeBeliefs {
  private RangeBeliefs() {}

  static @Nullable Double nominalIsVisible(RangeLookout lookout) {
    return lookout.nominalRange();
  }

  static @Nullable Double eyeHeightIgnored(RangeLookout lookout) {
    double horizon = lookout.elevation().horizon();
    return asked(lookout) ? Math.min(horizon, lookout.luminousRange()) : horizon;
  }

  static @Nullable Double heightsAddedFirst(RangeLookout lookout) {
    Elevation light = lookout.elevation();
    Elevation together = new Elevation(light.value().add(lookout.eye().value()), light.feet());
    return asked(lookout) ? null : together.horizon();
  }

  /** Takes the coefficient of feet for metres, or the reverse. */
  static @Nullable Double heightUnitMixed(RangeLookout lookout) {
    return asked(lookout)
        ? null
        : otherUnit(lookout.elevation()).geographicRange(otherUnit(lookout.eye()));
  }

  static @Nullable Double visibilityIgnored(RangeLookout lookout) {
    return asked(lookout) ? Math.min(lookout.geographicRange(), lookout.nominalRange()) : null;
  }

  static @Nullable Double horizonIgnored(RangeLookout lookout) {
    return asked(lookout) ? lookout.luminousRange() : null;
  }

  static @Nullable Double powerIgnored(RangeLookout lookout) {
    return asked(lookout) ? lookout.geographicRange() : null;
  }

  /** Whether tonight's air is asked about. */
  private static boolean asked(RangeLookout lookout) {
    return lookout.visibility() != null;
  }

  private static Elevation otherUnit(Elevation height) {
    return new Elevation(height.value(), !height.feet());
  }
}
