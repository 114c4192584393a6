package withy.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.h2.api.ErrorCode;
import withy.store.StoreRefused.Problem;

/** Opens and closes an H2 database by its address. */
final class Database {
  private static final String USER = "sa";
  private static final String PASSWORD = "";

  /** Connections that read at once. */
  static final int MANY = 8;

  private Database() {}

  /**
   * One connection, outside any pool.
   *
   * @throws StoreRefused if the database is in use by another program, or damaged
   */
  static Connection connect(String url) {
    try {
      return DriverManager.getConnection(url, USER, PASSWORD);
    } catch (SQLException e) {
      throw new StoreRefused(problem(e), e, plain(url));
    }
  }

  private static Problem problem(SQLException e) {
    return switch (e.getErrorCode()) {
      case ErrorCode.DATABASE_ALREADY_OPEN_1 -> Problem.IN_USE;
      default -> Problem.UNREADABLE;
    };
  }

  private static String plain(String url) {
    return url.replaceFirst("^jdbc:h2:(async:|nio:|mem:)*", "").replaceFirst(";.*", "");
  }

  /**
   * Starts the engine, which stays until it is shut down.
   *
   * @throws StoreRefused if the database is in use by another program, or damaged
   */
  static void open(String url) {
    try {
      connect(url).close();
    } catch (SQLException e) {
      throw new StoreRefused(Problem.UNREADABLE, e, plain(url));
    }
  }

  /** A pool of so many connections to a database that can be opened. */
  static HikariDataSource pool(String url, int connections) {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(url);
    config.setUsername(USER);
    config.setPassword(PASSWORD);
    config.setMaximumPoolSize(connections);
    config.setPoolName("withy-" + connections);
    return new HikariDataSource(config);
  }

  /** Writes everything out and closes the files; the pool is to be closed before. */
  static void shutDown(String url) {
    try (Connection last = connect(url);
        Statement statement = last.createStatement()) {
      statement.execute("SHUTDOWN");
    } catch (SQLException e) {
      throw new StoreRefused(Problem.UNREADABLE, e, plain(url));
    }
  }
}
