package withy.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.Term;

/** Words of the trade as they are sent. */
final class Terms {
  private Terms() {}

  /** The word of a field that must be there. */
  static <T extends Term> T one(List<T> known, Body body, String field) {
    return parse(known, body, field, body.text(field));
  }

  /** The word of a field that may be absent or null. */
  static <T extends Term> @Nullable T optional(List<T> known, Body body, String field) {
    return body.has(field) ? one(known, body, field) : null;
  }

  /** The words of a field that may be absent. */
  static <E extends Enum<E> & Term> List<E> list(Class<E> type, Body body, String field) {
    JsonNode array = body.optional(field);
    if (array == null) {
      return List.of();
    }
    if (!array.isArray()) {
      return body.malformed(field);
    }
    List<E> known = List.of(type.getEnumConstants());
    List<E> words = new ArrayList<>();
    array.forEach(each -> words.add(parse(known, body, field, each.textValue())));
    return words;
  }

  /** Texts of a field that must be there. */
  static List<String> words(Body body, String field) {
    JsonNode array = body.required(field);
    List<String> words = new ArrayList<>();
    for (JsonNode each : array) {
      words.add(each.isTextual() ? each.textValue() : body.malformed(field));
    }
    return array.isArray() ? words : body.malformed(field);
  }

  private static <T extends Term> T parse(List<T> known, Body body, String field, String word) {
    try {
      return Term.parse(known, word);
    } catch (IllegalArgumentException unknown) {
      return body.malformed(field);
    }
  }
}
