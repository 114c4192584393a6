package withy.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import withy.store.StoreRefused.Problem;

/** Copies the database of a folder that no server has open, and makes one from a copy. */
public final class Backup {
  private Backup() {}

  /**
   * Writes a copy of the database as it stands.
   *
   * @return rows copied
   * @throws StoreRefused if there is no database, a server has it open, or the file is there
   */
  public static long write(Path folder, Path file) {
    DataFolder data = DataFolder.of(folder);
    Copy.requireNew(file);
    if (!data.hasDatabase()) {
      throw new StoreRefused(Problem.NO_DATABASE, data.path());
    }
    Database.open(data.url());
    try (HikariDataSource pool = Database.pool(data.url(), Database.MANY)) {
      return Copy.write(pool, file);
    } finally {
      Database.shutDown(data.url());
    }
  }

  /**
   * Makes the database of an empty folder from a copy, and brings it up to date.
   *
   * @throws StoreRefused if the folder holds anything, or the file is no copy that can be used; the
   *     folder is empty again then
   */
  public static void restore(Path file, Path folder, Clock clock) {
    DataFolder data = DataFolder.of(folder);
    if (!data.isEmpty()) {
      throw new StoreRefused(Problem.NOT_EMPTY, data.path());
    }
    if (Files.isDirectory(file) || !Files.isReadable(file)) {
      throw new StoreRefused(Problem.NO_BACKUP, file);
    }
    try {
      Copy.read(file, data.made().loadingUrl());
      Store.open(folder, clock).close();
    } catch (StoreRefused e) {
      empty(data);
      throw e;
    }
  }

  private static void empty(DataFolder data) {
    try {
      DataFolder.empty(data.path());
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, data.path());
    }
  }
}
