package withy.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.light.Elevation;
import withy.core.light.LightSector;
import withy.core.scenario.Lookout;
import withy.core.scenario.RangeLookout;
import withy.core.scenario.Scenario;
import withy.core.scenario.SectorLookout;
import withy.core.scenario.SectorQuestion;

/**
 * The fields of a situation that say of a light ashore what is known: heights in {@code
 * heightUnit}, ranges and visibility in nautical miles, sectors as true bearings from seaward.
 */
final class LookoutJson {
  private final JsonGenerator json;

  LookoutJson(JsonGenerator json) {
    this.json = json;
  }

  void write(Scenario scenario, @Nullable Lookout lookout) throws IOException {
    if (lookout instanceof RangeLookout range) {
      range(range);
    }
    if (lookout instanceof SectorLookout sectors) {
      sectors(scenario, sectors);
    }
  }

  private void range(RangeLookout lookout) throws IOException {
    @Nullable Double visibility = lookout.visibility();
    json.writeStringField("asked", visibility == null ? "geographic-range" : "seen-from");
    light(lookout);
    height("elevation", lookout.elevation());
    number("nominalRange", lookout.nominalRange());
    json.writeEndObject();
    height("eyeHeight", lookout.eye());
    json.writeStringField("heightUnit", lookout.eye().feet() ? "ft" : "m");
    number(
        "visibility", visibility == null ? OptionalDouble.empty() : OptionalDouble.of(visibility));
    json.writeArrayFieldStart("luminousRanges");
    for (Map.Entry<Integer, Double> each : lookout.luminousTable().entrySet()) {
      json.writeStartObject();
      number("nominalRange", each.getKey());
      number("luminousRange", each.getValue());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void sectors(Scenario scenario, SectorLookout lookout) throws IOException {
    json.writeStringField("asked", "sector-" + lookout.question().id());
    light(lookout);
    json.writeArrayFieldStart("sectors");
    for (LightSector each : lookout.sectors().sectors()) {
      json.writeStartObject();
      number("from", each.bearings().from().degrees());
      number("to", each.bearings().to().degrees());
      json.writeStringField("colour", each.colour().id());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    if (lookout.question() == SectorQuestion.LIMIT) {
      json.writeStringField("whiteTurns", lookout.beyond().id());
      return;
    }
    number("lightBearing", lookout.bearing().degrees());
    if (lookout.question() == SectorQuestion.BOW) {
      Bearing heading = scenario.situation().heading();
      number("relativeBearing", lookout.bearing().relativeTo(heading));
    }
  }

  private void light(Lookout lookout) throws IOException {
    json.writeObjectFieldStart("light");
    json.writeStringField("character", lookout.light().shortNotation());
  }

  private void height(String field, Elevation height) throws IOException {
    json.writeFieldName(field);
    json.writeNumber(height.value().toPlainString());
  }

  private void number(String field, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      number(field, value.getAsDouble());
    } else {
      json.writeNullField(field);
    }
  }

  private void number(String field, double value) throws IOException {
    json.writeNumberField(field, value);
  }
}
