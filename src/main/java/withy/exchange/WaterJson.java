package withy.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import withy.core.geometry.Polyline;
import withy.core.geometry.Position;
import withy.core.item.Way;
import withy.core.scenario.Sailing;
import withy.core.waterway.Danger;
import withy.core.waterway.DepthField;
import withy.core.waterway.Fairway;
import withy.core.waterway.LeadingLine;

/** The stretch of water of an item, so that anyone can sail it again: metres, north up. */
final class WaterJson {
  private static final double HUNDREDTHS = 100;

  private final JsonGenerator json;

  WaterJson(JsonGenerator json) {
    this.json = json;
  }

  void write(Sailing sailing) throws IOException {
    json.writeObjectFieldStart("water");
    depths(sailing.water().depths());
    json.writeNumberField("tide", sailing.water().tide());
    json.writeNumberField("draught", sailing.keel().draught());
    json.writeNumberField("margin", sailing.keel().margin());
    point(json, "boat", sailing.boat());
    json.writeArrayFieldStart("fairways");
    for (Fairway each : sailing.water().fairways()) {
      json.writeStartObject();
      json.writeStringField("id", each.id());
      line(json, "line", each.line());
      json.writeNumberField("width", each.width());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("dangers");
    for (Danger each : sailing.water().dangers()) {
      danger(each);
    }
    json.writeEndArray();
    leadingLines(sailing.water().leadingLines());
    json.writeEndObject();
  }

  /** None are written of a water that has none. */
  private void leadingLines(List<LeadingLine> lines) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("leadingLines");
    for (LeadingLine each : lines) {
      json.writeStartObject();
      point(json, "front", each.front());
      point(json, "rear", each.rear());
      double tenths = Math.rint(10 * each.bearing().degrees()) / 10;
      json.writeNumberField("bearing", tenths % 360);
      line(json, "followed", each.followed());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void depths(DepthField depths) throws IOException {
    point(json, "origin", depths.origin());
    json.writeNumberField("cell", depths.cell());
    json.writeArrayFieldStart("depths");
    for (int row = 0; row < depths.rows(); row++) {
      json.writeStartArray();
      for (int column = 0; column < depths.columns(); column++) {
        json.writeNumber(depths.depth(column, row));
      }
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void danger(Danger danger) throws IOException {
    json.writeStartObject();
    json.writeStringField("kind", danger.kind().id());
    point(json, "at", danger.at());
    json.writeNumberField("radius", danger.radius());
    json.writeNumberField("leastDepth", danger.leastDepth());
    json.writeEndObject();
  }

  /** What becomes of a boat that acts on an option. */
  static void way(JsonGenerator json, Way way) throws IOException {
    line(json, "track", way.track());
    json.writeNumberField("leastDepth", Math.rint(way.leastDepth() * HUNDREDTHS) / HUNDREDTHS);
    if (way.fault() != null) {
      json.writeStringField("fault", way.fault().id());
    }
  }

  private static void line(JsonGenerator json, String field, Polyline line) throws IOException {
    json.writeArrayFieldStart(field);
    for (Position each : line.points()) {
      pair(json, each);
    }
    json.writeEndArray();
  }

  static void point(JsonGenerator json, String field, Position place) throws IOException {
    json.writeFieldName(field);
    pair(json, place);
  }

  private static void pair(JsonGenerator json, Position place) throws IOException {
    json.writeStartArray();
    json.writeNumber(place.x());
    json.writeNumber(place.y());
    json.writeEndArray();
  }
}
