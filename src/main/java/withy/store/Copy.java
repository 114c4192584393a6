package withy.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
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
    requireNew(file);
    try {
      Path aside = aside(file);
      try {
        return write(database, file, aside);
      } finally {
        DataFolder.removeAll(aside);
      }
    } catch (IOException | JdbiException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, file);
    }
  }

  /**
   * @throws StoreRefused if the file is there
   */
  static void requireNew(Path file) {
    if (Files.exists(file)) {
      throw new StoreRefused(Problem.FILE_THERE, file);
    }
  }

  /** A folder beside the file that only its owner can enter, before anything personal is in it. */
  private static Path aside(Path file) throws IOException {
    Path parent = Files.createDirectories(file.toAbsolutePath().normalize().getParent());
    return Files.createTempDirectory(parent, ".copy");
  }

  private static long write(DataSource database, Path file, Path aside) throws IOException {
    Path part = aside.resolve("copy.zip");
    Map<String, Long> rows = script(database, part);
    DataFolder.forOwnerAlone(part, "rw-------");
    requireSame(rows, part, file, aside);
    Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    return rows.values().stream().mapToLong(Long::longValue).sum();
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

  private static void requireSame(Map<String, Long> rows, Path part, Path file, Path aside) {
    String url = DataFolder.of(aside).loadingUrl();
    read(part, url);
    if (!counted(url).equals(rows)) {
      throw new StoreRefused(Problem.BACKUP_DIFFERS, file);
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
}
