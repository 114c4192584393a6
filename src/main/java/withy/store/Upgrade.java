package withy.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import withy.store.StoreRefused.Problem;

/**
 * Brings the database of a folder up to date. H2 cannot take back half a step, so an existing
 * database is copied first, and put back from the copy when a step fails.
 */
final class Upgrade {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final DataFolder folder;
  private final Clock clock;
  private final String place;
  private @Nullable Path copy;

  Upgrade(DataFolder folder, Clock clock, String place) {
    this.folder = folder;
    this.clock = clock;
    this.place = place;
  }

  /**
   * Leaves the database open and up to date.
   *
   * @throws StoreRefused if it cannot be used; what it held is unharmed
   */
  void run() {
    Database.open(folder.url());
    try (HikariDataSource pool = Database.pool(folder.url(), Database.MANY)) {
      upgrade(pool);
    } catch (StoreRefused e) {
      Database.shutDown(folder.url());
      putBack();
      throw e;
    }
  }

  private void upgrade(HikariDataSource pool) {
    Migrations migrations = Migrations.of(pool, place, folder.file().toString());
    migrations.requireKnown();
    if (migrations.hasBegun() && migrations.isPending()) {
      String stamp = STAMP.format(clock.instant());
      Path planned = folder.backup("before-" + migrations.next() + "-" + stamp + ".zip");
      Copy.write(pool, planned);
      copy = planned;
    }
    migrations.run();
  }

  private void putBack() {
    Path before = copy;
    if (before == null) {
      return;
    }
    try {
      Path broken = folder.file().resolveSibling(folder.file().getFileName() + ".failed");
      Files.move(folder.file(), broken, StandardCopyOption.REPLACE_EXISTING);
      Copy.read(before, folder.loadingUrl());
      Files.delete(broken);
    } catch (IOException e) {
      throw new StoreRefused(Problem.UNWRITABLE, e, folder.path());
    }
  }
}
