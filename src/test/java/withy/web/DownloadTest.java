package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DownloadTest {
  @ParameterizedTest
  @CsvSource({
    "responses, 'filename=\"responses.csv\"; filename*=UTF-8''''responses.csv'",
    "école, 'filename=\"_cole.csv\"; filename*=UTF-8''''%C3%A9cole.csv'",
    "a\"b;c, 'filename=\"a_b_c.csv\"; filename*=UTF-8''''a%22b%3Bc.csv'",
    "a/b\\c, 'filename=\"a_b_c.csv\"; filename*=UTF-8''''a_b_c.csv'",
    "⛵, 'filename=\"_.csv\"; filename*=UTF-8''''%E2%9B%B5.csv'",
  })
  void namesAFileWhateverItsNameHolds(String name, String expected) {
    assertThat(Download.disposition(name, "csv")).isEqualTo("attachment; " + expected);
  }

  @org.junit.jupiter.api.Test
  void letsNoNameBreakTheHeader() {
    assertThat(Download.disposition("a\r\nSet-Cookie: b", "csv")).doesNotContain("\r", "\n");
  }
}
