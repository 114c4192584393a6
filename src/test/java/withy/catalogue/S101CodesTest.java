package withy.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import withy.core.Term;

/** Codes stand for what the S-101 feature catalogue says. */
class S101CodesTest {
  private static final Map<String, Map<Integer, ? extends Object>> TABLES =
      Map.of(
          "colour", S101Codes.COLOUR,
          "buoyShape", S101Codes.BUOY_SHAPE,
          "topmarkDaymarkShape", S101Codes.TOPMARK,
          "categoryOfLateralMark", S101Codes.LATERAL,
          "categoryOfCardinalMark", S101Codes.CARDINAL,
          "marksNavigationalSystemOf", S101Codes.SYSTEM);

  /** Words of ours that the catalogue says otherwise. */
  private static final Map<String, String> SAID =
      Map.of("can", "cylinder", "conical", "conical", "x", "xshaped", "a", "ialaa", "b", "ialab");

  @ParameterizedTest
  @CsvFileSource(
      resources = "/withy/standard/s101/attribute-codes.csv",
      useHeadersInDisplayName = true)
  void standForWhatTheCatalogueSays(String attribute, int code, String label, String source) {
    @Nullable Map<Integer, ? extends Object> table = TABLES.get(attribute);
    @Nullable Object term = table == null ? null : table.get(code);
    if (term != null) {
      String ours = plain(term instanceof Term word ? word.id() : term.toString());
      String theirs = plain(label);
      assertThat(theirs.contains(ours) || theirs.startsWith(SAID.getOrDefault(ours, ours)))
          .as("%s %d: %s is %s (%s)", attribute, code, label, ours, source)
          .isTrue();
    }
  }

  /** Letters and digits alone, the numbers as digits and the shapes in one order. */
  private static String plain(String label) {
    String plain = label.toLowerCase(Locale.ROOT).replace("two-", "2").replaceAll("[^a-z0-9]", "");
    return plain
        .replace("pointsupward", "up")
        .replace("pointsdownward", "down")
        .replace("conepointup", "coneup")
        .replace("conepointdown", "conedown");
  }
}
