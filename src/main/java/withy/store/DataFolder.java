package withy.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.stream.Stream;
import withy.store.StoreRefused.Problem;

/** The folder that holds the database, the copies made of it, and what commands need to know. */
final class DataFolder {
  private static final String DATABASE = "withy";
  private static final String FILE = DATABASE + ".mv.db";

  private final Path folder;

  private DataFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  static DataFolder of(Path folder) {
    return new DataFolder(folder);
  }

  /** The folder, made if it was not there; what it holds is for its owner alone. */
  DataFolder made() {
    try {
      if (!Files.isDirectory(folder)) {
        Files.createDirectories(folder);
        forOwnerAlone(folder, "rwx------");
      }
      return this;
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, folder);
    }
  }

  boolean hasDatabase() {
    return Files.exists(file());
  }

  boolean isEmpty() {
    if (!Files.exists(folder)) {
      return true;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.findAny().isEmpty();
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, folder);
    }
  }

  Path path() {
    return folder;
  }

  Path file() {
    return folder.resolve(FILE);
  }

  Path backup(String name) {
    return folder.resolve("backups").resolve(name);
  }

  /** Where a running server says how commands reach it. */
  Path announcement() {
    return folder.resolve("running-server");
  }

  /**
   * Each commit is on the disk before it returns (WRITE_DELAY), a thread that is interrupted closes
   * no file (async), and the engine lives until it is shut down (DB_CLOSE_DELAY), not until the
   * machine begins to exit, when requests are still being finished (DB_CLOSE_ON_EXIT). It writes no
   * log of its own, which would hold nicknames (TRACE_LEVEL_FILE).
   */
  String url() {
    return loadingUrl() + ";WRITE_DELAY=0";
  }

  /** As {@link #url()}, while it is filled from a copy: all is on the disk when it is shut down. */
  String loadingUrl() {
    return "jdbc:h2:async:"
        + folder.resolve(DATABASE)
        + ";DB_CLOSE_DELAY=-1;DB_CLOSE_ON_EXIT=FALSE;LOCK_TIMEOUT=10000;TRACE_LEVEL_FILE=0";
  }

  /** Takes a file or folder from everybody but its owner, where the file system knows owners. */
  static void forOwnerAlone(Path path, String permissions) throws IOException {
    if (Files.getFileStore(path).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }
  }

  /** Removes a folder of ours with all that it holds. */
  static void removeAll(Path folder) throws IOException {
    empty(folder);
    Files.delete(folder);
  }

  /** Removes all that a folder of ours holds. */
  static void empty(Path folder) throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path each : inside.skip(1).sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    }
  }
}
