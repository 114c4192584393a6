package withy.store;

import java.util.Arrays;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.flywaydb.core.api.exception.FlywayValidateException;
import withy.store.StoreRefused.Problem;

/** Brings a database up to date, step by step. */
final class Migrations {
  static final String PLACE = "classpath:db/migration";

  private final Flyway flyway;
  private final String name;

  private Migrations(Flyway flyway, String name) {
    this.flyway = flyway;
    this.name = name;
  }

  /**
   * @param name under which a refusal speaks of the database
   */
  static Migrations of(DataSource database, String place, String name) {
    return new Migrations(Flyway.configure().dataSource(database).locations(place).load(), name);
  }

  /**
   * @throws StoreRefused if the database is newer than this program, or half brought up to date
   */
  void requireKnown() {
    for (MigrationInfo each : flyway.info().all()) {
      MigrationState state = each.getState();
      if (state == MigrationState.FUTURE_SUCCESS || state == MigrationState.FUTURE_FAILED) {
        throw new StoreRefused(Problem.NEWER, name);
      }
      if (state.isFailed()) {
        throw new StoreRefused(Problem.BROKEN_HISTORY, name);
      }
    }
  }

  boolean isPending() {
    return flyway.info().pending().length > 0;
  }

  /** Whether steps were taken already, so that there is something to lose. */
  boolean hasBegun() {
    return flyway.info().applied().length > 0;
  }

  /** The version that the next step leads to. */
  String next() {
    return Arrays.stream(flyway.info().pending())
        .map(each -> String.valueOf(each.getVersion()))
        .findFirst()
        .orElse("");
  }

  /**
   * @throws StoreRefused if a step fails, or the steps taken are not those known
   */
  void run() {
    try {
      flyway.migrate();
    } catch (FlywayValidateException e) {
      throw new StoreRefused(Problem.BROKEN_HISTORY, e, name);
    } catch (FlywayException e) {
      throw new StoreRefused(Problem.MIGRATION_FAILED, e, name);
    }
  }
}
