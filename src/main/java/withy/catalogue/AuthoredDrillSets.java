package withy.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import withy.usecase.DrillSets;

/** The drill sets that are packed with the program, read when somebody first asks for them. */
public final class AuthoredDrillSets implements DrillSets {
  private static final List<String> IDS =
      List.of(
          "first-evening",
          "outbound",
          "cardinal-marks",
          "by-night",
          "before-the-harbour",
          "the-skarrow",
          "skarrow-passage");

  private @Nullable List<Named> read;

  @Override
  public synchronized List<Named> all() {
    if (read == null) {
      read = IDS.stream().map(AuthoredDrillSets::read).toList();
    }
    return read;
  }

  private static Named read(String id) {
    String file = id + ".json";
    try (InputStream in = AuthoredDrillSets.class.getResourceAsStream("/scenarios/" + file)) {
      byte[] text = Objects.requireNonNull(in, file).readAllBytes();
      return new Named(id, DrillSetReader.read(file, new String(text, UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
