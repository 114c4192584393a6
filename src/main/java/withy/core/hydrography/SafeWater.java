package withy.core.hydrography;

import withy.core.geometry.Bearing;
import withy.core.geometry.Position;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/** Water in which a safe water mark may be laid. */
final class SafeWater {
  /** Metres of safe water that such a mark wants round it. */
  private static final double ROUND = 85;

  private SafeWater() {}

  /** Whether the keel has her margin on every bearing from a place. */
  static boolean isAllRound(Waterway water, Keel keel, Position place) {
    for (int bearing = 0; bearing < 360; bearing += 30) {
      if (!keel.isSafe(water.water(place.moved(Bearing.of(bearing), ROUND)))) {
        return false;
      }
    }
    return true;
  }
}
