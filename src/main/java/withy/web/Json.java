package withy.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/** Writes what the server says to scripts. */
public final class Json {
  /** The media type of JSON. */
  public static final String MEDIA_TYPE = "application/json; charset=utf-8";

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private Json() {}

  /** A record, list or map as JSON in UTF-8. */
  static byte[] bytes(Object value) {
    return text(value).getBytes(StandardCharsets.UTF_8);
  }

  /** A record, list or map as JSON. */
  public static String text(Object value) {
    try {
      return MAPPER.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** Answers with a status and a record, list or map as JSON. */
  public static void answer(Context context, int status, Object value) {
    context.status(status).contentType(MEDIA_TYPE).result(bytes(value));
  }
}
