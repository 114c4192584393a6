package withy.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Map;
import withy.core.item.Answer;
import withy.core.item.Assembly;
import withy.core.item.Choice;
import withy.core.item.Feature;
import withy.core.item.Option;
import withy.core.item.Part;
import withy.core.item.Passage;
import withy.core.item.Quantity;
import withy.core.item.Slot;
import withy.wording.ItemWording;

/** The fields of an item that say how it is answered and what is right. */
final class AnswerJson {
  private final JsonGenerator json;
  private final ItemWording wording;

  AnswerJson(JsonGenerator json, ItemWording wording) {
    this.json = json;
    this.wording = wording;
  }

  void write(Answer answer) throws IOException {
    if (answer instanceof Choice choice) {
      choice(choice);
    } else if (answer instanceof Quantity quantity) {
      quantity(quantity);
    } else if (answer instanceof Assembly assembly) {
      assembly(assembly);
    } else if (answer instanceof Passage passage) {
      passage(passage);
    }
  }

  private void choice(Choice choice) throws IOException {
    json.writeArrayFieldStart("options");
    for (Option each : choice.options()) {
      json.writeStartObject();
      json.writeStringField("value", each.value());
      json.writeStringField("text", wording.option(each));
      json.writeStringField(
          "misconception", each.misconception() == null ? null : each.misconception().id());
      json.writeStringField("mistook", wording.mistook(each));
      if (each.way() != null) {
        WaterJson.way(json, each.way());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("key", choice.key());
  }

  /** The legs in the order in which the boat meets the marks, then the track that is right. */
  private void passage(Passage passage) throws IOException {
    json.writeArrayFieldStart("parts");
    for (Passage.Leg each : passage.legs()) {
      json.writeStartObject();
      json.writeNumberField("mark", each.mark());
      choice(each.sides());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("beliefs");
    for (Passage.Belief each : passage.beliefs()) {
      json.writeStartObject();
      json.writeArrayFieldStart("sides");
      for (String side : each.sides()) {
        json.writeString(side);
      }
      json.writeEndArray();
      json.writeStringField("misconception", each.misconception().id());
      json.writeStringField("mistook", wording.text(each.mistook()));
      json.writeEndObject();
    }
    json.writeEndArray();
    WaterJson.way(json, passage.way());
  }

  private void quantity(Quantity quantity) throws IOException {
    json.writeObjectFieldStart("answer");
    json.writeStringField("unit", quantity.unit().symbol());
    number("value", quantity.value());
    number("tolerance", quantity.tolerance());
    json.writeArrayFieldStart("beliefs");
    for (Quantity.Belief each : quantity.beliefs()) {
      json.writeStartObject();
      number("value", each.value());
      json.writeStringField("misconception", each.misconception().id());
      json.writeStringField("mistook", wording.text(each.mistook()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** Without an exponent, which {@code double} would have from ten million on. */
  private void number(String field, double value) throws IOException {
    json.writeFieldName(field);
    json.writeNumber(BigDecimal.valueOf(value).toPlainString());
  }

  private void assembly(Assembly assembly) throws IOException {
    json.writeArrayFieldStart("slots");
    for (Slot each : assembly.slots()) {
      json.writeStartObject();
      json.writeStringField("slot", each.feature().id());
      json.writeArrayFieldStart("choices");
      for (Part part : each.parts()) {
        json.writeString(part.value());
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    parts("key", assembly.parts());
    json.writeArrayFieldStart("beliefs");
    for (Assembly.Belief each : assembly.beliefs()) {
      json.writeStartObject();
      parts("parts", each.parts());
      json.writeStringField("misconception", each.misconception().id());
      json.writeStringField("mistook", wording.text(each.mistook()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void parts(String field, Map<Feature, String> parts) throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<Feature, String> each : parts.entrySet()) {
      json.writeStringField(each.getKey().id(), each.getValue());
    }
    json.writeEndObject();
  }
}
