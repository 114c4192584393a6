package withy.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The features of a water, by their names in the IHO S-101 feature catalogue. */
enum FeatureType {
  LAND_AREA("LandArea", Shape.Type.POLYGON, Shape.Type.MULTI_POLYGON),
  DEPTH_AREA("DepthArea", Shape.Type.POLYGON, Shape.Type.MULTI_POLYGON),
  SOUNDING("Sounding", Shape.Type.POINT, Shape.Type.MULTI_POINT),
  /** In S-101 a surface; here the line along its middle, in the conventional direction. */
  FAIRWAY("Fairway", Shape.Type.LINE_STRING),
  NAVIGATION_LINE("NavigationLine", Shape.Type.LINE_STRING),
  UNDERWATER_AWASH_ROCK("UnderwaterAwashRock", Shape.Type.POINT),
  WRECK("Wreck", Shape.Type.POINT),
  OBSTRUCTION("Obstruction", Shape.Type.POINT),
  LATERAL_BUOY("LateralBuoy", Shape.Type.POINT),
  LATERAL_BEACON("LateralBeacon", Shape.Type.POINT),
  CARDINAL_BUOY("CardinalBuoy", Shape.Type.POINT),
  CARDINAL_BEACON("CardinalBeacon", Shape.Type.POINT),
  ISOLATED_DANGER_BUOY("IsolatedDangerBuoy", Shape.Type.POINT),
  ISOLATED_DANGER_BEACON("IsolatedDangerBeacon", Shape.Type.POINT),
  SAFE_WATER_BUOY("SafeWaterBuoy", Shape.Type.POINT),
  SAFE_WATER_BEACON("SafeWaterBeacon", Shape.Type.POINT),
  SPECIAL_PURPOSE_GENERAL_BUOY("SpecialPurposeGeneralBuoy", Shape.Type.POINT),
  SPECIAL_PURPOSE_GENERAL_BEACON("SpecialPurposeGeneralBeacon", Shape.Type.POINT),
  EMERGENCY_WRECK_MARKING_BUOY("EmergencyWreckMarkingBuoy", Shape.Type.POINT);

  private final String word;
  private final List<Shape.Type> shapes;

  FeatureType(String word, Shape.Type... shapes) {
    this.word = word;
    this.shapes = List.of(shapes);
  }

  /** The name in the catalogue. */
  String word() {
    return word;
  }

  List<Shape.Type> shapes() {
    return shapes;
  }

  boolean isMark() {
    return ordinal() >= LATERAL_BUOY.ordinal();
  }

  boolean isBeacon() {
    return word.endsWith("Beacon");
  }

  boolean isDanger() {
    return this == UNDERWATER_AWASH_ROCK || this == WRECK || this == OBSTRUCTION;
  }

  static Optional<FeatureType> of(String word) {
    return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
  }

  static List<String> words() {
    List<String> words = new ArrayList<>();
    for (FeatureType each : values()) {
      words.add(each.word);
    }
    return words;
  }
}
