package withy.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import withy.core.geometry.Geodetic;

/** Reads geometries as RFC 7946 lays them down: longitude first, rings closed. */
final class ShapeReader {
  /** Most positions in a file. */
  static final int MOST_POSITIONS = 50_000;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Problems problems;
  private int positions;

  ShapeReader(Problems problems) {
    this.problems = problems;
  }

  int positions() {
    return positions;
  }

  /** The geometry of a feature; empty where it is unfit, which is noted. */
  Optional<Shape> read(JsonNode geometry, String place, List<Shape.Type> allowed) {
    String word = geometry.path("type").asText();
    for (Shape.Type each : allowed) {
      if (each.word().equals(word)) {
        return coordinates(each, geometry.path("coordinates"), place + ".coordinates");
      }
    }
    List<String> words = allowed.stream().map(Shape.Type::word).toList();
    problems.add(place + ".type", "geometry", word, String.join(", ", words));
    return Optional.empty();
  }

  private Optional<Shape> coordinates(Shape.Type type, JsonNode node, String place) {
    int before = problems.size();
    List<List<Geodetic>> parts = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    switch (type) {
      case POINT -> point(node, place, parts, heights);
      case MULTI_POINT -> each(node, place, 1, (one, at) -> point(one, at, parts, heights));
      case LINE_STRING -> parts.add(line(node, place));
      case POLYGON -> polygon(node, place, parts);
      case MULTI_POLYGON -> each(node, place, 1, (one, at) -> polygon(one, at, parts));
      default -> throw new IllegalStateException(type.word());
    }
    boolean sound = problems.size() == before;
    return sound ? Optional.of(new Shape(type, parts, heights)) : Optional.empty();
  }

  private interface Step {
    void take(JsonNode node, String place);
  }

  private void each(JsonNode array, String place, int least, Step step) {
    if (!array.isArray() || array.size() < least) {
      problems.add(place, "array", least);
      return;
    }
    for (int i = 0; i < array.size(); i++) {
      step.take(array.path(i), place + "[" + i + "]");
    }
  }

  private void point(
      JsonNode node, String place, List<List<Geodetic>> parts, List<Double> heights) {
    @Nullable Geodetic at = position(node, place);
    if (at != null) {
      parts.add(List.of(at));
      heights.add(node.path(2).isNumber() ? node.path(2).doubleValue() : Double.NaN);
    }
  }

  private List<Geodetic> line(JsonNode node, String place) {
    List<Geodetic> line = new ArrayList<>();
    each(
        node,
        place,
        2,
        (one, at) -> {
          @Nullable Geodetic next = position(one, at);
          if (next != null && !line.isEmpty() && line.get(line.size() - 1).equals(next)) {
            problems.add(at, "repeated");
          } else if (next != null) {
            line.add(next);
          }
        });
    return line;
  }

  private void polygon(JsonNode node, String place, List<List<Geodetic>> parts) {
    boolean[] outer = {true};
    each(
        node,
        place,
        1,
        (one, at) -> {
          ring(one, at, outer[0]).ifPresent(parts::add);
          outer[0] = false;
        });
  }

  private Optional<List<Geodetic>> ring(JsonNode node, String place, boolean outer) {
    int before = problems.size();
    List<Geodetic> ring = new ArrayList<>();
    each(
        node,
        place,
        4,
        (one, at) -> {
          @Nullable Geodetic next = position(one, at);
          if (next != null) {
            ring.add(next);
          }
        });
    if (problems.size() > before) {
      return Optional.empty();
    }
    if (!ring.get(0).equals(ring.get(ring.size() - 1))) {
      problems.add(place, "not-closed");
      return Optional.empty();
    }
    return sound(ring, place, outer) ? Optional.of(open(ring)) : Optional.empty();
  }

  private boolean sound(List<Geodetic> ring, String place, boolean outer) {
    Coordinate[] corners =
        ring.stream()
            .map(each -> new Coordinate(each.longitude(), each.latitude()))
            .toArray(Coordinate[]::new);
    LinearRing drawn = GEOMETRY.createLinearRing(corners);
    if (drawn.convexHull().getArea() == 0) {
      problems.add(place, "no-extent");
      return false;
    }
    if (!new IsSimpleOp(drawn).isSimple()) {
      problems.add(place, "crosses-itself");
      return false;
    }
    if (Orientation.isCCW(corners) != outer) {
      problems.remark(place, outer ? "clockwise" : "counter-clockwise");
    }
    return true;
  }

  /** The ring without its last place and without places that repeat the one before. */
  private static List<Geodetic> open(List<Geodetic> ring) {
    List<Geodetic> open = new ArrayList<>();
    for (Geodetic each : ring.subList(0, ring.size() - 1)) {
      if (open.isEmpty() || !open.get(open.size() - 1).equals(each)) {
        open.add(each);
      }
    }
    return open;
  }

  private @Nullable Geodetic position(JsonNode node, String place) {
    positions++;
    boolean pair = node.isArray() && (node.size() == 2 || node.size() == 3);
    for (int i = 0; pair && i < node.size(); i++) {
      pair = node.path(i).isNumber();
    }
    if (!pair) {
      problems.add(place, "position", Attributes.shown(node));
      return null;
    }
    double longitude = node.path(0).doubleValue();
    double latitude = node.path(1).doubleValue();
    if (!(Math.abs(longitude) <= 180)) {
      problems.add(place + "[0]", "longitude", Attributes.shown(node.path(0)));
      return null;
    }
    if (!(Math.abs(latitude) <= 85)) {
      problems.add(place + "[1]", "latitude", Attributes.shown(node.path(1)));
      return null;
    }
    return new Geodetic(latitude, longitude);
  }
}
