package withy.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the features of a GeoJSON text (RFC 7946), within limits that hold hostile ones off. */
final class FeatureReader {
  /** Most bytes of a file, most features in it. */
  static final int MOST_BYTES = 1 << 20;

  static final int MOST_FEATURES = 5_000;
  private static final int DEEPEST = 12;

  private static final ObjectReader JSON = LimitedJson.deep(DEEPEST).build().reader();

  private final Problems problems;
  private final ShapeReader shapes;

  FeatureReader(Problems problems) {
    this.problems = problems;
    this.shapes = new ShapeReader(problems);
  }

  /** The collection that a text holds; null where it is none, which is noted. */
  @Nullable JsonNode collection(String text) {
    if (text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      problems.add("", "too-large", MOST_BYTES / 1024);
      return null;
    }
    try {
      JsonNode root = JSON.readTree(text);
      if (root.isObject() && root.path("type").asText().equals("FeatureCollection")) {
        return root;
      }
      problems.add("type", "no-collection");
    } catch (JsonProcessingException e) {
      problems.add("", "no-json", line(e), column(e));
    }
    return null;
  }

  private static int line(JsonProcessingException e) {
    return e.getLocation() == null ? 1 : e.getLocation().getLineNr();
  }

  private static int column(JsonProcessingException e) {
    return e.getLocation() == null ? 1 : e.getLocation().getColumnNr();
  }

  /** The features whose name is known and whose geometry is sound. */
  List<SurveyedFeature> features(JsonNode root) {
    if (root.has("crs")) {
      problems.add("crs", "crs");
    }
    JsonNode array = root.path("features");
    if (!array.isArray() || array.isEmpty()) {
      problems.add("features", "array", 1);
      return List.of();
    }
    if (array.size() > MOST_FEATURES) {
      problems.add("features", "too-many-features", array.size(), MOST_FEATURES);
      return List.of();
    }
    List<SurveyedFeature> features = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      feature(array.path(i), "features[" + i + "]").ifPresent(features::add);
    }
    if (shapes.positions() > ShapeReader.MOST_POSITIONS) {
      problems.add(
          "features", "too-many-positions", shapes.positions(), ShapeReader.MOST_POSITIONS);
    }
    return features;
  }

  private Optional<SurveyedFeature> feature(JsonNode node, String place) {
    if (!node.path("type").asText().equals("Feature")) {
      problems.add(place + ".type", "no-feature");
      return Optional.empty();
    }
    if (node.has("crs")) {
      problems.add(place + ".crs", "crs");
    }
    JsonNode properties = node.path("properties");
    String word = properties.path("featureType").asText();
    Optional<FeatureType> type = FeatureType.of(word);
    if (type.isEmpty()) {
      String known = String.join(", ", FeatureType.words());
      String at = place + ".properties.featureType";
      if (properties.path("featureType").isTextual()) {
        problems.remark(at, "unknown-feature", word, known);
      } else {
        problems.add(at, "missing");
      }
      return Optional.empty();
    }
    String id = node.path("id").isTextual() ? node.path("id").textValue() : null;
    Attributes attributes = new Attributes(properties, place + ".properties", problems);
    return shapes
        .read(node.path("geometry"), place + ".geometry", type.get().shapes())
        .map(shape -> new SurveyedFeature(place, id, type.get(), attributes, shape));
  }
}
