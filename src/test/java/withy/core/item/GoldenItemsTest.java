package withy.core.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The same seed gives the same bytes anywhere. Where items are meant to change, {@code VERSION} of
 * the generator goes up and the file is written anew with {@link GoldenItems}.
 */
class GoldenItemsTest {
  @Test
  void itemsAreThoseOfTheGoldenFile() throws IOException {
    assertThat(GoldenItems.lines()).isEqualTo(golden());
  }

  @ParameterizedTest
  @CsvSource({"tr, TR", "fr, FR"})
  void anotherMachineInAnotherCountryWritesTheSame(String language, String country)
      throws IOException, InterruptedException {
    Process machine =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.language=" + language,
                "-Duser.country=" + country,
                "-Dfile.encoding=ISO-8859-1",
                "-cp",
                System.getProperty("java.class.path"),
                GoldenItems.class.getName())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String written = new String(machine.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(machine.waitFor()).isZero();
    assertThat(written).isEqualTo(golden());
  }

  private static String golden() throws IOException {
    try (InputStream file = GoldenItemsTest.class.getResourceAsStream("golden.jsonl")) {
      return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
