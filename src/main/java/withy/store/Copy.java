package withy.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import withy.store.StoreRefused.Problem;

/**
 * A copy of a database: the statements that make it anew, in a zip file, which any later version of
 * the engine reads.
 */
final class Copy {
  private Copy() {}

  /**
   * Writes a copy and proves that it can be read back.
   *
   * @return rows of all tables
   * @throws StoreRefused if the file is there, cannot be written, or differs from the database
   */
  static long write(DataSource database, Path file) {
    if (Files.exists(file)) {
      throw new StoreRefused(Problem.FILE_THERE, file);
    }
    Path part = file.resolveSibling(file.getFileName() + ".part");
    try {
      prepare(part);
      Map<String, Long> rows = script(database, part);
      requireSame(rows, part, file);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
      return rows.values().stream().mapToLong(Long::longValue).sum();
    } catch (IOException | JdbiException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, file);
    } finally {
      remove(part);
    }
  }

  /** An empty file for the owner alone, before anything personal stands in it. */
  private static void prepare(Path part) throws IOException {
    Files.createDirectories(part.toAbsolutePath().getParent());
    Files.deleteIfExists(part);
    Files.createFile(part);
    DataFolder.forOwnerAlone(part, "rw-------");
  }

  /**
   * Serializable, since only then H2 shows all tables as of one moment: under its default the copy
   * of a busy database held responses to items that it did not hold.
   */
  private static Map<String, Long> script(DataSource database, Path part) {
    return Jdbi.create(database)
        .inTransaction(
            TransactionIsolationLevel.SERIALIZABLE,
            handle -> {
              Map<String, Long> rows = RowCounts.of(handle);
              handle
                  .createQuery("SCRIPT NOPASSWORDS NOSETTINGS TO ? COMPRESSION ZIP")
                  .bind(0, part.toString())
                  .mapToMap()
                  .list();
              return rows;
            });
  }

  private static void requireSame(Map<String, Long> rows, Path part, Path file) throws IOException {
    Path proof = Files.createTempDirectory(part.toAbsolutePath().getParent(), ".proof");
    try {
      String url = DataFolder.of(proof).url();
      read(part, url);
      Map<String, Long> copied = counted(url);
      if (!copied.equals(rows)) {
        throw new StoreRefused(Problem.BACKUP_DIFFERS, file);
      }
    } finally {
      removeAll(proof);
    }
  }

  private static Map<String, Long> counted(String url) {
    Database.open(url);
    try (Handle handle = Jdbi.open(() -> Database.connect(url))) {
      return RowCounts.of(handle);
    } finally {
      Database.shutDown(url);
    }
  }

  /**
   * Makes a database from a copy, and leaves it closed.
   *
   * @throws StoreRefused if the file is no copy
   */
  static void read(Path file, String url) {
    Database.open(url);
    try (Handle handle = Jdbi.open(() -> Database.connect(url))) {
      handle
          .createUpdate("RUNSCRIPT FROM ? COMPRESSION ZIP")
          .bind(0, file.toAbsolutePath().toString())
          .execute();
      if (!RowCounts.of(handle).keySet().contains(RowCounts.RESPONSES)) {
        throw new StoreRefused(Problem.NO_BACKUP, file);
      }
    } catch (JdbiException e) {
      throw new StoreRefused(Problem.NO_BACKUP, e, file);
    } finally {
      Database.shutDown(url);
    }
  }

  private static void remove(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, part);
    }
  }

  private static void removeAll(Path folder) throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path each : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    }
  }
}
