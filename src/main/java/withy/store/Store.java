package withy.store;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import org.jdbi.v3.core.JdbiException;
import withy.usecase.BackupOffice;
import withy.usecase.DrillSetFiles;
import withy.usecase.Ports;
import withy.usecase.WaterFiles;

/** The database of one data folder, open for use by this program alone. */
public final class Store implements AutoCloseable {
  private final String url;
  private final HikariDataSource reading;
  private final HikariDataSource writing;
  private final Access access;
  private final Copies copies;

  private Store(String url, DataFolder folder) {
    this.url = url;
    this.reading = Database.pool(url, Database.MANY);
    this.writing = Database.pool(url, 1);
    this.access = Access.to(reading, writing);
    this.copies = new Copies(reading, folder);
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
    return new Store(folder.url(), folder);
  }

  /** A database that is not in a folder; the folder is for what is announced. */
  static Store over(String url, DataFolder folder) {
    Database.open(url);
    try (HikariDataSource pool = Database.pool(url, Database.MANY)) {
      Migrations.of(pool, Migrations.PLACE, url).run();
    }
    return new Store(url, folder);
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
    WaterTable waters = new WaterTable(access, waterFiles);
    return new Ports(
        new InstructorTable(access),
        new SchoolClassTable(access),
        new LearnerTable(access),
        new AssignmentTable(access, waters),
        new IssuedItemTable(access),
        new ResponseTable(access),
        new TurnTable(access),
        new SessionTable(access),
        new InvitationTable(access),
        waters,
        waterFiles,
        new DrillSetTable(access, waters, drillSetFiles),
        new CourseTable(access, waters, drillSetFiles),
        drillSetFiles,
        new EvidenceTable(access));
  }

  /** Makes copies while this store is open. */
  public BackupOffice backupOffice() {
    return copies;
  }

  /** Whether the database answers. */
  public boolean isAlive() {
    try {
      return access.read(handle -> handle.createQuery("SELECT 1").mapTo(Integer.class).one() == 1);
    } catch (JdbiException e) {
      return false;
    }
  }

  /** Writes everything out; call it when nobody uses the ports any more. */
  @Override
  public void close() {
    copies.close();
    reading.close();
    writing.close();
    Database.shutDown(url);
  }
}
