package withy.store;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import withy.store.StoreRefused.Problem;

/**
 * How a command reaches the server that has a data folder open.
 *
 * @param address of the server, as this machine reaches it
 * @param token which proves that the caller can read the data folder
 */
public record RunningServer(URI address, String token) {
  /** What the server of a folder announced; empty if none runs, or it has not got so far. */
  public static Optional<RunningServer> of(Path folder) {
    Path file = DataFolder.of(folder).announcement();
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
      return lines.size() < 2
          ? Optional.empty()
          : Optional.of(new RunningServer(URI.create(lines.get(0)), lines.get(1)));
    } catch (IOException | IllegalArgumentException e) {
      throw new StoreRefused(Problem.UNREADABLE, e, file);
    }
  }

  /** The file is for its owner alone before the token stands in it. */
  void writeTo(Path file) {
    try {
      Files.deleteIfExists(file);
      Files.createFile(file);
      DataFolder.forOwnerAlone(file, "rw-------");
      Files.write(file, List.of(address.toString(), token), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, file);
    }
  }

  static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, file);
    }
  }

  @Override
  public String toString() {
    return "RunningServer[" + address + "]"; // the token belongs in no log
  }
}
