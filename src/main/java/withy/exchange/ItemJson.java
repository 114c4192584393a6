package withy.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.Board;
import withy.core.mark.Colour;
import withy.core.mark.Topmark;
import withy.core.scenario.Sailing;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.Situation;
import withy.core.waterway.PlacedMark;
import withy.wording.ItemWording;

/** An item with its key as one line of JSON, as the command {@code scenarios} writes it. */
public final class ItemJson {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator json;
  private final ItemWording wording;

  private ItemJson(JsonGenerator json, ItemWording wording) {
    this.json = json;
    this.wording = wording;
  }

  /** One JSON object without a line's end; angles in degrees true, distances in metres. */
  public static String line(Item item, ItemWording wording) {
    StringWriter line = new StringWriter(1024);
    try (JsonGenerator json = FACTORY.createGenerator(line)) {
      new ItemJson(json, wording).item(item);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return line.toString();
  }

  private void item(Item item) throws IOException {
    json.writeStartObject();
    term("form", item.form());
    json.writeNumberField("seed", item.seed());
    json.writeNumberField("index", item.index());
    term("practice", item.scenario().practice());
    json.writeStringField("region", item.scenario().practice().region().name());
    concepts(item.concepts());
    situation(item.scenario());
    @Nullable Sailing sailing = item.scenario().sailing();
    if (sailing != null) {
      new WaterJson(json).write(sailing);
    }
    json.writeArrayFieldStart("marks");
    for (int i = 0; i < item.scenario().marks().size(); i++) {
      mark(item.scenario().marks().get(i), sailing == null ? null : sailing.marks().get(i));
    }
    json.writeEndArray();
    json.writeStringField("prompt", wording.prompt(item));
    new AnswerJson(json, wording).write(item.answer());
    json.writeStringField("explanation", wording.explanation(item));
    json.writeEndObject();
  }

  private void concepts(List<Concept> concepts) throws IOException {
    json.writeArrayFieldStart("concepts");
    for (Concept each : concepts) {
      json.writeString(each.id());
    }
    json.writeEndArray();
  }

  private void situation(Scenario scenario) throws IOException {
    Situation situation = scenario.situation();
    json.writeObjectFieldStart("situation");
    bearing("heading", situation.heading());
    term("travel", situation.travel());
    bearing("buoyageBearing", situation.buoyage());
    term("time", situation.time());
    term("view", situation.view());
    term("intent", situation.intent());
    if (!scenario.marks().isEmpty() && scenario.mark().lead() != null) {
      leads(scenario.mark().bearing().angleTo(situation.heading()) < 90);
    }
    if (situation.setting() != null) {
      term("setting", situation.setting());
      bearing("generalBearing", situation.general());
    }
    if (situation.waters() != null) {
      term("waters", situation.waters());
    }
    if (scenario.question() != null) {
      term("asked", scenario.question());
    }
    new LookoutJson(json).write(scenario, scenario.lookout());
    json.writeEndObject();
  }

  private void leads(boolean ahead) throws IOException {
    json.writeStringField("leads", ahead ? "ahead" : "astern");
  }

  private void mark(SightedMark mark, @Nullable PlacedMark placed) throws IOException {
    json.writeStartObject();
    term("kind", mark.kind());
    bearing("bearing", mark.bearing());
    json.writeNumberField("distance", mark.distance());
    json.writeStringField("label", mark.label());
    if (mark.lead() != null) {
      json.writeStringField(
          "lead", String.format(Locale.ROOT, "%03d", Math.round(mark.lead().degrees())));
    }
    if (placed != null) {
      WaterJson.point(json, "position", placed.position());
      json.writeStringField("serves", placed.serves());
    }
    appearance(mark.appearance());
    json.writeEndObject();
  }

  private void appearance(Appearance appearance) throws IOException {
    json.writeObjectFieldStart("appearance");
    term("body", appearance.body());
    term("pattern", appearance.pattern());
    colours(appearance.colours());
    term("symbol", appearance.symbol());
    board(appearance.board());
    if (appearance.structure() != null) {
      term("structure", appearance.structure());
    }
    topmark(appearance.topmark());
    @Nullable LightCharacter light = appearance.light();
    json.writeStringField("light", light == null ? null : light.notation());
    json.writeEndObject();
  }

  private void board(@Nullable Board board) throws IOException {
    if (board == null) {
      json.writeNullField("board");
      return;
    }
    json.writeObjectFieldStart("board");
    term("shape", board.shape());
    term("border", board.border());
    if (board.ground() != null) {
      term("ground", board.ground());
    }
    if (board.taper() != null) {
      term("taper", board.taper());
    }
    json.writeEndObject();
  }

  private void topmark(@Nullable Topmark topmark) throws IOException {
    if (topmark == null) {
      json.writeNullField("topmark");
      return;
    }
    json.writeObjectFieldStart("topmark");
    term("shape", topmark.shape());
    colours(topmark.colours());
    json.writeEndObject();
  }

  private void colours(List<Colour> colours) throws IOException {
    json.writeArrayFieldStart("colours");
    for (Colour each : colours) {
      json.writeString(each.id());
    }
    json.writeEndArray();
  }

  private void term(String field, @Nullable Term term) throws IOException {
    json.writeStringField(field, term == null ? null : term.id());
  }

  private void bearing(String field, @Nullable Bearing bearing) throws IOException {
    if (bearing == null) {
      json.writeNullField(field);
    } else {
      json.writeNumberField(field, bearing.degrees());
    }
  }
}
