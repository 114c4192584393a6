package withy.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExactJsonTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1.50",
        "1e5",
        "-0.0",
        "1E-7",
        "100",
        "-12.3400",
        "12345678901234567890",
        "0.1",
        "1.0E+3"
      })
  void numbersKeepTheirDigits(String number) throws JsonProcessingException {
    String once = ExactJson.write(ExactJson.read("{\"a\":" + number + "}"));
    assertThat(ExactJson.write(ExactJson.read(once))).isEqualTo(once);
    assertThat(new java.math.BigDecimal(once.substring(5, once.length() - 1)))
        .isEqualTo(new java.math.BigDecimal(number));
  }

  @Test
  void membersKeepTheirOrderAndSignsTheirShape() throws JsonProcessingException {
    String text = "{\"b\":\"é „ü“ \\n\",\"a\":[1,null,true]}";
    assertThat(ExactJson.write(ExactJson.read(text))).isEqualTo(text);
    assertThat(ExactJson.with(text, "b", "x")).isEqualTo("{\"b\":\"x\",\"a\":[1,null,true]}");
    assertThat(ExactJson.with("{}", "title", "x")).isEqualTo("{\"title\":\"x\"}");
  }

  @Test
  void whatIsHostileIsRefused() {
    String deep = "[".repeat(40) + "]".repeat(40);
    assertThatThrownBy(() -> ExactJson.read(deep)).isInstanceOf(JsonProcessingException.class);
    String twice = "{\"a\":1,\"a\":2}";
    assertThatThrownBy(() -> ExactJson.read(twice)).isInstanceOf(JsonProcessingException.class);
    String endless = "[" + "9".repeat(100) + "]";
    assertThatThrownBy(() -> ExactJson.read(endless)).isInstanceOf(JsonProcessingException.class);
  }
}
