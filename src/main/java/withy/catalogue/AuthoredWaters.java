package withy.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.UnfitWater;
import withy.usecase.WaterFiles.Authored;

/** The waters that are packed with the program, read when somebody first asks for them. */
final class AuthoredWaters {
  private static final List<String> IDS = List.of("home-water");

  private AuthoredWaters() {}

  /** Holds them; made by the first who asks. */
  private static final class Read {
    static final List<Authored> ALL = IDS.stream().map(AuthoredWaters::authored).toList();
  }

  static List<Authored> all() {
    return Read.ALL;
  }

  /** The one of an id. */
  static Optional<SurveyedWater> find(String id) {
    return IDS.contains(id)
        ? all().stream().filter(each -> each.id().equals(id)).findFirst().map(Authored::water)
        : Optional.empty();
  }

  private static Authored authored(String id) {
    String file = "/scenarios/waters/" + id + ".json";
    try (InputStream in = AuthoredWaters.class.getResourceAsStream(file)) {
      byte[] bytes = Objects.requireNonNull(in, file).readAllBytes();
      String text = new String(bytes, StandardCharsets.UTF_8);
      return new Authored(id, text, new WaterReader().read(id, null, text).water());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    } catch (UnfitWater e) {
      throw new IllegalStateException(file + ": " + e.problems(), e);
    }
  }
}
