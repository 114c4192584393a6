package withy.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The bundle itself: each key once, each pattern fit for what wording puts in. */
class BundleTest {
  private static final Path FILE = Path.of("src/main/resources/messages.properties");

  @Test
  void holdsEachKeyOnce() throws IOException {
    List<String> keys = new ArrayList<>();
    for (String line : Files.readAllLines(FILE)) {
      if (!line.isBlank() && !line.startsWith("#") && line.indexOf('=') > 0) {
        keys.add(line.substring(0, line.indexOf('=')).strip());
      }
    }
    assertThat(keys).hasSizeGreaterThan(500).doesNotHaveDuplicates();
  }

  /** Numbers come as words of the locale, which a pattern cannot format again. */
  @Test
  void leavesNumbersToTheWording() {
    Wording wording = Wording.of(Locale.ENGLISH);
    for (String key : wording.keys()) {
      for (Format each : new MessageFormat(wording.pattern(key)).getFormatsByArgumentIndex()) {
        assertThat(each).as(key).isNull();
      }
    }
  }
}
