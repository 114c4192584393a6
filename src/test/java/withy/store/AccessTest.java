package withy.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AccessTest {
  private static final String URL = "jdbc:h2:mem:access;DB_CLOSE_DELAY=-1";

  private HikariDataSource many;
  private HikariDataSource one;
  private Access access;

  @BeforeEach
  void open() {
    many = Database.pool(URL, Database.MANY);
    one = Database.pool(URL, 1);
    access = Access.to(many, one);
    write(access.writing(), "CREATE TABLE buoy (name VARCHAR(20) PRIMARY KEY)");
  }

  @AfterEach
  void close() {
    many.close();
    one.close();
    Database.shutDown(URL);
  }

  private static void write(Jdbi jdbi, String sql) {
    jdbi.useHandle(handle -> handle.execute(sql));
  }

  private int count() {
    return access
        .reading()
        .withHandle(
            handle -> handle.createQuery("SELECT COUNT(*) FROM buoy").mapTo(Integer.class).one());
  }

  @Test
  void refusesToWriteWhereItReads() {
    assertThatThrownBy(() -> write(access.reading(), "INSERT INTO buoy VALUES ('Ness')"))
        .hasMessageContaining("only a writing connection may INSERT INTO buoy");
    assertThatThrownBy(() -> write(access.reading(), "SELECT name FROM buoy FOR UPDATE"))
        .isInstanceOf(IllegalStateException.class);
    assertThat(count()).isZero();
  }

  @Test
  void beginsNoTransactionBeforeTheLastOneEnded() throws Exception {
    ExecutorService other = Executors.newSingleThreadExecutor();
    CountDownLatch asked = new CountDownLatch(1);
    Future<?> second =
        access
            .writing()
            .inTransaction(
                handle -> {
                  handle.execute("INSERT INTO buoy VALUES ('Ness')");
                  Future<?> waiting = other.submit(() -> insertAnother(asked));
                  asked.await();
                  assertThatThrownBy(() -> waiting.get(200, TimeUnit.MILLISECONDS))
                      .isInstanceOf(TimeoutException.class);
                  assertThat(count()).as("who reads does not wait").isZero();
                  return waiting;
                });
    second.get(10, TimeUnit.SECONDS);
    other.shutdown();
    assertThat(count()).isEqualTo(2);
  }

  private void insertAnother(CountDownLatch asked) {
    asked.countDown();
    write(access.writing(), "INSERT INTO buoy VALUES ('Holm')");
  }
}
