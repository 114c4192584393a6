package withy.store;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import withy.usecase.BackupOffice;
import withy.usecase.DrillSetFiles;
import withy.usecase.Ports;
import withy.usecase.WaterFiles;

/** The database of one data folder, open for use by this program alone. */
public final class Store implements AutoCloseable {
  private final String url;
  private final HikariDataSource pool;
  private final Jdbi jdbi;
  private final Copies copies;

  private Store(String url, HikariDataSource pool, DataFolder folder) {
    this.url = url;
    this.pool = pool;
    this.jdbi = Jdbi.create(pool);
    Moments.registerWith(jdbi);
    this.copies = new Copies(pool, folder);
  }

  /**
   * Opens the database of a folder, made if there is none, and brings it up to date; before that an
   * existing one is copied, and put back if it fails.
   *
   * @throws StoreRefused if it cannot be used
   */
  public static Store open(Path path, Clock clock) {
    return open(path, clock, Migrations.PLACE);
  }

  /**
   * @param migrations where the steps lie that bring the database up to date
   */
  static Store open(Path path, Clock clock, String migrations) {
    DataFolder folder = DataFolder.of(path).made();
    new Upgrade(folder, clock, migrations).run();
    return new Store(folder.url(), Database.pool(folder.url()), folder);
  }

  /** A database that is not in a folder; the folder is for what is announced. */
  static Store over(String url, DataFolder folder) {
    Database.open(url);
    HikariDataSource pool = Database.pool(url);
    Migrations.of(pool, Migrations.PLACE, url).run();
    return new Store(url, pool, folder);
  }

  /** Where everything is kept, without waters of files. */
  public Ports ports() {
    return ports(WaterFiles.NONE);
  }

  /** Where everything is kept, without files of drill sets. */
  public Ports ports(WaterFiles waterFiles) {
    return ports(waterFiles, DrillSetFiles.NONE);
  }

  /**
   * Where everything is kept.
   *
   * @param waterFiles reads the files of waters
   * @param drillSetFiles reads and writes drill sets
   */
  public Ports ports(WaterFiles waterFiles, DrillSetFiles drillSetFiles) {
    WaterTable waters = new WaterTable(jdbi, waterFiles);
    return new Ports(
        new InstructorTable(jdbi),
        new SchoolClassTable(jdbi),
        new LearnerTable(jdbi),
        new AssignmentTable(jdbi, waters),
        new IssuedItemTable(jdbi),
        new ResponseTable(jdbi),
        new SessionTable(jdbi),
        new InvitationTable(jdbi),
        waters,
        waterFiles,
        new DrillSetTable(jdbi, waters, drillSetFiles),
        new CourseTable(jdbi, waters, drillSetFiles),
        drillSetFiles);
  }

  /** Makes copies while this store is open. */
  public BackupOffice backupOffice() {
    return copies;
  }

  /** Whether the database answers. */
  public boolean isAlive() {
    try {
      return jdbi.withHandle(
          handle -> handle.createQuery("SELECT 1").mapTo(Integer.class).one() == 1);
    } catch (JdbiException e) {
      return false;
    }
  }

  /** Writes everything out; call it when nobody uses the ports any more. */
  @Override
  public void close() {
    copies.close();
    pool.close();
    Database.shutDown(url);
  }
}
