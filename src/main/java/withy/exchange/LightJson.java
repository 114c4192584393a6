package withy.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.MileSpan;
import withy.core.light.Phase;

/** A light's character and timeline as one JSON object. */
public final class LightJson {

  private static final JsonFactory JSON = new JsonFactory();

  private LightJson() {}

  /**
   * The object on one line. Seconds are decimal numbers that add up to the period exactly; a fixed
   * light has the period null and one phase, whose seconds say nothing. {@code group} and {@code
   * morse} stand where the class has them, {@code colours} where several colours are sectors,
   * {@code elevation} (metres) and {@code ranges} (nautical miles) where they are stated.
   */
  public static String write(LightCharacter light) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text)) {
      write(light, light.timeline(), json);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static void write(LightCharacter light, LightTimeline timeline, JsonGenerator json)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("character", light.shortNotation());
    json.writeStringField("class", light.lightClass().id());
    writeGroup(light, json);
    writePeriod(timeline.periodMillis(), json);
    if (timeline.assumed()) {
      json.writeBooleanField("assumed", true);
    }
    if (light.sectored()) {
      writeColours(light, json);
    }
    writeStated(light, json);
    json.writeArrayFieldStart("phases");
    for (Phase phase : timeline.phases()) {
      writePhase(phase, json);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void writeGroup(LightCharacter light, JsonGenerator json) throws IOException {
    if (!light.morse().isEmpty()) {
      json.writeStringField("morse", light.morse());
    }
    if (!light.group().isEmpty()) {
      json.writeArrayFieldStart("group");
      for (int number : light.group()) {
        json.writeNumber(number);
      }
      json.writeEndArray();
    }
  }

  private static void writePeriod(OptionalInt millis, JsonGenerator json) throws IOException {
    if (millis.isPresent()) {
      json.writeNumberField("period", seconds(millis.getAsInt()));
    } else {
      json.writeNullField("period");
    }
  }

  private static void writeColours(LightCharacter light, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("colours");
    for (LightColour colour : light.colours()) {
      json.writeString(colour.id());
    }
    json.writeEndArray();
  }

  private static void writeStated(LightCharacter light, JsonGenerator json) throws IOException {
    if (light.elevation().isPresent()) {
      json.writeNumberField("elevation", plain(light.elevation().get().metres()));
    }
    if (!light.ranges().isEmpty()) {
      json.writeArrayFieldStart("ranges");
      for (LightColour colour : light.colours()) {
        Optional<MileSpan> range = light.rangeOf(colour);
        if (range.isPresent()) {
          writeRange(colour, range.get(), json);
        }
      }
      json.writeEndArray();
    }
  }

  private static void writeRange(LightColour colour, MileSpan range, JsonGenerator json)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("colour", colour.id());
    json.writeNumberField("least", plain(range.least()));
    json.writeNumberField("most", plain(range.most()));
    json.writeEndObject();
  }

  private static void writePhase(Phase phase, JsonGenerator json) throws IOException {
    json.writeStartObject();
    LightColour colour = phase.colour();
    if (colour == null) {
      json.writeNullField("colour");
    } else {
      json.writeStringField("colour", colour.id());
    }
    json.writeNumberField("seconds", seconds(phase.millis()));
    if (phase.high()) {
      json.writeStringField("intensity", "high");
    }
    json.writeEndObject();
  }

  private static BigDecimal seconds(int millis) {
    return plain(BigDecimal.valueOf(millis, 3).stripTrailingZeros());
  }

  /** With one decimal or more, so that no exponent is written. */
  private static BigDecimal plain(BigDecimal number) {
    return number.scale() < 1 ? number.setScale(1) : number;
  }
}
