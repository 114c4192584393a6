package withy.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;

/** The file of a small water: a dredged cut that runs north between drying flats and land. */
final class WaterText {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final double LATITUDE = 50;
  private static final double LONGITUDE = -40;

  private final ObjectNode root = JSON.createObjectNode();
  private final ArrayNode features;

  private WaterText() {
    root.put("type", "FeatureCollection").put("title", "The Cut").put("tide", 0.4);
    root.put("marksNavigationalSystemOf", 1);
    features = root.putArray("features");
  }

  /**
   * 0 flats, 1 the cut, 2 land in the east, 3 a sounding, 4 the fairway, 5 a port-hand buoy, 6 a
   * starboard-hand buoy, 7 a rock.
   */
  static WaterText cut() {
    WaterText text = new WaterText();
    text.box("DepthArea", 0, 0, 1000, 1600)
        .put("depthRangeMinimumValue", -1.5)
        .put("depthRangeMaximumValue", 0);
    text.box("DepthArea", 440, 0, 560, 1600)
        .put("depthRangeMinimumValue", 2)
        .put("depthRangeMaximumValue", 5);
    text.box("LandArea", 900, 0, 1000, 1600);
    text.point("Sounding", 500, 400).put("valueOfSounding", 4.3);
    ObjectNode fairway = text.feature("Fairway", "LineString");
    fairway.put("width", 100).put("depthRangeMinimumValue", 2.8);
    ArrayNode line = text.coordinates();
    position(line.addArray(), 500, -50);
    position(line.addArray(), 500, 1650);
    text.last().put("id", "main");
    text.point("LateralBuoy", 446, 700)
        .put("categoryOfLateralMark", 1)
        .put("featureName", "2")
        .put("buoyShape", 2)
        .put("lightCharacteristic", 2)
        .put("signalGroup", "(3)")
        .put("signalPeriod", 10)
        .putArray("colour")
        .add(3);
    text.point("LateralBuoy", 554, 900)
        .put("categoryOfLateralMark", 2)
        .put("featureName", "1")
        .put("topmarkDaymarkShape", 1)
        .put("buoyShape", 4);
    text.point("UnderwaterAwashRock", 200, 800).put("valueOfSounding", -0.6);
    return text;
  }

  /** The same with something changed. */
  WaterText with(Consumer<WaterText> change) {
    change.accept(this);
    return this;
  }

  ObjectNode root() {
    return root;
  }

  ObjectNode feature(int index) {
    return (ObjectNode) features.get(index);
  }

  ObjectNode properties(int index) {
    return (ObjectNode) feature(index).get("properties");
  }

  ArrayNode coordinates(int index) {
    return (ArrayNode) feature(index).get("geometry").get("coordinates");
  }

  ObjectNode point(String type, double x, double y) {
    ObjectNode properties = feature(type, "Point");
    position(coordinates(), x, y);
    return properties;
  }

  ObjectNode box(String type, double west, double south, double east, double north) {
    ObjectNode properties = feature(type, "Polygon");
    ArrayNode ring = coordinates().addArray();
    position(ring.addArray(), west, south);
    position(ring.addArray(), east, south);
    position(ring.addArray(), east, north);
    position(ring.addArray(), west, north);
    position(ring.addArray(), west, south);
    return properties;
  }

  ObjectNode line(String type, double... places) {
    ObjectNode properties = feature(type, "LineString");
    ArrayNode line = coordinates();
    for (int i = 0; i < places.length; i += 2) {
      position(line.addArray(), places[i], places[i + 1]);
    }
    return properties;
  }

  private ObjectNode feature(String type, String geometry) {
    ObjectNode feature = features.addObject().put("type", "Feature");
    feature.putObject("geometry").put("type", geometry).putArray("coordinates");
    return feature.putObject("properties").put("featureType", type);
  }

  private ObjectNode last() {
    return feature(features.size() - 1);
  }

  private ArrayNode coordinates() {
    return coordinates(features.size() - 1);
  }

  /** Metres to degrees, near enough. */
  private static void position(ArrayNode array, double x, double y) {
    array.add(LONGITUDE + x / 71_695.7).add(LATITUDE + y / 111_229.0);
  }

  @Override
  public String toString() {
    return ((JsonNode) root).toString();
  }
}
