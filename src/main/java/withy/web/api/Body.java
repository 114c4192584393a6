package withy.web.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.web.Declined;
import withy.web.Fault;

/**
 * The JSON object that a call sends, read field by field: each must be known, there if it is
 * required, and of its type.
 */
final class Body {
  private static final int DEEPEST = 20;
  private static final ObjectReader READER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build()
          .reader();

  private final JsonNode object;
  private final String path;
  private final Set<String> known = new LinkedHashSet<>();

  private Body(JsonNode object, String path) {
    this.object = object;
    this.path = path;
  }

  /**
   * The body of a call.
   *
   * @throws Declined if it is not sent as JSON, is none, or is no object
   */
  static Body of(Context context) {
    if (!isJson(context.contentType())) {
      throw Declined.of(Fault.WRONG_MEDIA_TYPE);
    }
    JsonNode read = read(context.bodyAsBytes());
    if (!read.isObject()) {
      throw Declined.field(Fault.MALFORMED_FIELD, "body");
    }
    return new Body(read, "");
  }

  private static boolean isJson(@Nullable String type) {
    String plain = type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    return plain.equals("application/json");
  }

  private static JsonNode read(byte[] bytes) {
    try {
      JsonNode read = READER.readTree(bytes);
      if (read.isMissingNode()) {
        throw Declined.of(Fault.NO_JSON);
      }
      return read;
    } catch (IOException notJson) {
      throw Declined.of(Fault.NO_JSON);
    }
  }

  /** Whether a field is there and not null. */
  boolean has(String field) {
    known.add(field);
    return object.hasNonNull(field);
  }

  /** A field that must be there, whatever it holds. */
  JsonNode required(String field) {
    known.add(field);
    JsonNode value = object.get(field);
    if (value == null) {
      throw Declined.field(Fault.MISSING_FIELD, path + field);
    }
    return value;
  }

  /** A field that may be absent or null. */
  @Nullable JsonNode optional(String field) {
    return has(field) ? object.get(field) : null;
  }

  /** The text of a field that must be there. */
  String text(String field) {
    JsonNode value = required(field);
    return value.isTextual() ? value.textValue() : malformed(field);
  }

  /** The text of a field that must be there and may be null. */
  @Nullable String textOrNull(String field) {
    return required(field).isNull() ? null : text(field);
  }

  /** The text of a field that may be absent or null. */
  @Nullable String optionalText(String field) {
    return has(field) ? text(field) : null;
  }

  /** The whole number of a field that must be there. */
  long wholeNumber(String field) {
    JsonNode value = required(field);
    boolean whole = value.isIntegralNumber() && value.canConvertToLong();
    return whole ? value.longValue() : malformed(field);
  }

  /** Yes or no, of a field that must be there. */
  boolean truth(String field) {
    JsonNode value = required(field);
    return value.isBoolean() ? value.booleanValue() : malformed(field);
  }

  /** The object of a field that must be there. */
  Body object(String field) {
    JsonNode value = required(field);
    return value.isObject() ? new Body(value, path + field + ".") : malformed(field);
  }

  /** The names of all fields, in the order in which they were sent. */
  List<String> fields() {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** Declines the call because of a field. */
  <T> T malformed(String field) {
    throw Declined.field(Fault.MALFORMED_FIELD, path + field);
  }

  /**
   * All fields were asked for.
   *
   * @throws Declined if there is one that nobody asked for
   */
  void requireNothingElse() {
    for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!known.contains(name)) {
        throw Declined.field(Fault.UNKNOWN_FIELD, path + name);
      }
    }
  }
}
