package withy.catalogue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Reads and writes JSON so that what was read is written with the same numbers, digit by digit, and
 * with its members in the same order; within limits that hold hostile texts off.
 */
final class ExactJson {
  private static final int DEEPEST = 16;

  private static final JsonMapper JSON =
      LimitedJson.deep(DEEPEST)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private ExactJson() {}

  static JsonNode read(String text) throws JsonProcessingException {
    return JSON.readTree(text);
  }

  /** On one line, without spaces. */
  static String write(Object value) {
    try {
      return JSON.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e); // words, numbers and what was read can be written
    }
  }

  /** The object of a text with one member set: where it stands, else at the end. */
  static String with(String text, String member, String value) {
    try {
      return write(((ObjectNode) JSON.readTree(text)).put(member, value));
    } catch (JsonProcessingException | ClassCastException e) {
      throw new IllegalArgumentException("no JSON object", e);
    }
  }
}
