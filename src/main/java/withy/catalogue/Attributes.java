package withy.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The attributes of a feature, each asked for by its name and held to its range. */
final class Attributes {
  private static final int LONGEST_TEXT = 200;

  private final JsonNode properties;
  private final String place;
  private final Problems problems;

  Attributes(JsonNode properties, String place, Problems problems) {
    this.properties = properties;
    this.place = place;
    this.problems = problems;
  }

  String place(String name) {
    return place.isEmpty() ? name : place + "." + name;
  }

  boolean has(String name) {
    return properties.hasNonNull(name);
  }

  /** A number between two others, both included; null where there is none or an unfit one. */
  @Nullable Double number(String name, double least, double most) {
    JsonNode value = properties.path(name);
    if (value.isMissingNode() || value.isNull()) {
      return null;
    }
    double number = value.isNumber() ? value.doubleValue() : Double.NaN;
    if (!(number >= least && number <= most)) {
      problems.add(place(name), "number", shown(value), least, most);
      return null;
    }
    return number;
  }

  /** The same where there must be one. */
  @Nullable Double requiredNumber(String name, double least, double most) {
    if (!has(name)) {
      problems.add(place(name), "missing");
    }
    return number(name, least, most);
  }

  /** A code of a list; null where there is none or an unknown one. */
  @Nullable Integer code(String name, List<Integer> known) {
    List<Integer> codes = codes(name, known);
    return codes.isEmpty() ? null : codes.get(0);
  }

  /** The same where there must be one. */
  @Nullable Integer requiredCode(String name, List<Integer> known) {
    if (!has(name)) {
      problems.add(place(name), "missing");
    }
    return code(name, known);
  }

  /** One code or a list of them; those that are known. */
  List<Integer> codes(String name, List<Integer> known) {
    JsonNode value = properties.path(name);
    List<Integer> codes = new ArrayList<>();
    if (value.isArray()) {
      for (int i = 0; i < value.size(); i++) {
        code(place(name) + "[" + i + "]", value.path(i), known, codes);
      }
    } else if (!value.isMissingNode() && !value.isNull()) {
      code(place(name), value, known, codes);
    }
    return codes;
  }

  private void code(String at, JsonNode value, List<Integer> known, List<Integer> codes) {
    if (value.isIntegralNumber() && value.canConvertToInt() && known.contains(value.intValue())) {
      codes.add(value.intValue());
    } else {
      problems.add(at, "code", shown(value), listed(known));
    }
  }

  private static String listed(List<Integer> known) {
    return String.join(", ", known.stream().map(String::valueOf).toList());
  }

  /** A text; null where there is none. */
  @Nullable String text(String name) {
    JsonNode value = properties.path(name);
    if (value.isMissingNode() || value.isNull()) {
      return null;
    }
    if (!value.isTextual() || value.textValue().length() > LONGEST_TEXT) {
      problems.add(place(name), "text", LONGEST_TEXT);
      return null;
    }
    return value.textValue();
  }

  /** A feature's name: a text, or as S-101 has it a list of objects with a name. */
  @Nullable String featureName() {
    JsonNode value = properties.path("featureName");
    JsonNode first = value.isArray() ? value.path(0) : value;
    if (first.isObject()) {
      String at = value.isArray() ? "featureName[0]" : "featureName";
      return new Attributes(first, place(at), problems).text("name");
    }
    return text("featureName");
  }

  /** What somebody wrote, short enough to be shown again. */
  static String shown(JsonNode value) {
    String text = value.toString();
    return text.length() <= 40 ? text : text.substring(0, 40) + "…";
  }
}
