package withy.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Writes what the server says to scripts. */
final class Json {
  private static final JsonMapper PROBLEMS =
      JsonMapper.builder().defaultPropertyInclusion(present()).build();

  private Json() {}

  /** A problem document as bytes; what does not apply is left out. */
  static byte[] bytes(Problem problem) {
    try {
      return PROBLEMS.writeValueAsString(problem).getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonInclude.Value present() {
    return JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.NON_NULL);
  }
}
