package withy.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import withy.core.light.LightCharacter;

class LightJsonTest {

  private static String json(String text) {
    return LightJson.write(LightCharacter.parse(text));
  }

  @Test
  void writesCharacterClassPeriodAndPhases() {
    assertThat(json("Fl(2) R 5s [0.4;0.6;0.4;3.6]"))
        .isEqualTo(
            "{\"character\":\"Fl(2) R 5s\",\"class\":\"group-flashing\",\"group\":[2],"
                + "\"period\":5.0,\"phases\":[{\"colour\":\"red\",\"seconds\":0.4},"
                + "{\"colour\":null,\"seconds\":0.6},{\"colour\":\"red\",\"seconds\":0.4},"
                + "{\"colour\":null,\"seconds\":3.6}]}");
  }

  @Test
  void writesNoPeriodOfAFixedLight() {
    assertThat(json("F R"))
        .isEqualTo(
            "{\"character\":\"F R\",\"class\":\"fixed\",\"period\":null,"
                + "\"phases\":[{\"colour\":\"red\",\"seconds\":1.0}]}");
  }

  @Test
  void saysWhatIsAssumed() {
    assertThat(json("Q")).contains("\"character\":\"Q W\"", "\"assumed\":true", "\"period\":1.0");
    assertThat(json("Iso 4s")).doesNotContain("assumed");
  }

  @Test
  void writesSectorsRangesAndElevation() {
    assertThat(json("Fl(3)WRG.15s21m15-11M"))
        .contains(
            "\"colours\":[\"white\",\"red\",\"green\"]",
            "\"elevation\":21.0",
            "{\"colour\":\"red\",\"least\":11.0,\"most\":15.0}")
        .doesNotContain("\"colour\":\"red\",\"seconds\"");
    assertThat(json("Al WR 10s")).doesNotContain("colours");
  }

  @Test
  void marksTheBrighterFlash() {
    assertThat(json("FFl W 10s"))
        .contains("{\"colour\":\"white\",\"seconds\":1.0,\"intensity\":\"high\"}")
        .contains("{\"colour\":\"white\",\"seconds\":9.0}");
  }

  @Test
  void namesTheLettersOfAMorseLight() {
    assertThat(json("Mo(A) 8s")).contains("\"class\":\"morse\",\"morse\":\"A\"");
  }

  @Property(tries = 200)
  void secondsAddUpToThePeriodInDecimals(@ForAll @IntRange(min = 1201, max = 30_000) int millis)
      throws Exception {
    String seconds = BigDecimal.valueOf(millis, 3).toPlainString();
    String text = json("Fl W " + seconds + "s");
    JsonNode node =
        new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).readTree(text);
    BigDecimal sum = BigDecimal.ZERO;
    for (JsonNode phase : node.get("phases")) {
      sum = sum.add(phase.get("seconds").decimalValue());
    }
    assertThat(sum).isEqualByComparingTo(node.get("period").decimalValue());
    assertThat(sum).isEqualByComparingTo(seconds);
    assertThat(text).doesNotContain("E").doesNotContain("0000");
  }
}
