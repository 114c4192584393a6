package withy.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Geodetic;

/** The corners of what a file surveys: its areas and soundings; lines may run beyond. */
record Extent(Geodetic southWest, Geodetic northEast) {
  private static final List<FeatureType> GROUND =
      List.of(FeatureType.DEPTH_AREA, FeatureType.LAND_AREA, FeatureType.SOUNDING);

  /** The corners; null where nothing is surveyed. */
  static @Nullable Extent of(List<SurveyedFeature> features) {
    double west = 180;
    double south = 90;
    double east = -180;
    double north = -90;
    boolean deep = false;
    for (SurveyedFeature feature : features) {
      if (!GROUND.contains(feature.type())) {
        continue;
      }
      deep |= feature.type() != FeatureType.LAND_AREA;
      for (List<Geodetic> part : feature.shape().parts()) {
        for (Geodetic each : part) {
          west = Math.min(west, each.longitude());
          south = Math.min(south, each.latitude());
          east = Math.max(east, each.longitude());
          north = Math.max(north, each.latitude());
        }
      }
    }
    return deep ? new Extent(new Geodetic(south, west), new Geodetic(north, east)) : null;
  }
}
