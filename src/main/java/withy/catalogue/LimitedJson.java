package withy.catalogue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** JSON that people send, within limits that hold hostile texts off. */
final class LimitedJson {
  private static final int LONGEST_NUMBER = 40;
  private static final int LONGEST_TEXT = 2_000;

  private LimitedJson() {}

  /**
   * Refuses members of one name, and what stands after the end.
   *
   * @param deepest how deeply arrays and objects may lie in each other
   */
  static JsonMapper.Builder deep(int deepest) {
    return JsonMapper.builder(
            JsonFactory.builder()
                .streamReadConstraints(
                    StreamReadConstraints.builder()
                        .maxNestingDepth(deepest)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxStringLength(LONGEST_TEXT)
                        .maxNameLength(LONGEST_TEXT)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build())
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
  }
}
