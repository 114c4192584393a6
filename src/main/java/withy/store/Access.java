package withy.store;

import com.zaxxer.hikari.HikariDataSource;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.HandleConsumer;
import org.jdbi.v3.core.Jdbi;

/**
 * The two ways to a database: many may read at once, but one transaction alone writes.
 *
 * <p>H2 saves each of its maps (a table, an index, the log of what to undo) as it is when its turn
 * comes, not all as of one moment. If another transaction is committed in between, what is saved
 * holds half of it, and is mended by that transaction's own save. A machine that stops between the
 * two leaves an index without its row: a learner's next item can then be neither stored nor found.
 * One such tear came up in a hundred kills under load, none when the writers waited for each other
 * (the engine's issue 2080, open). As each commit waits for the disk, they lose little.
 *
 * @param reading refuses to write
 * @param writing one transaction after the other
 */
record Access(Jdbi reading, Jdbi writing) {

  /**
   * @param one a pool of a single connection
   */
  static Access to(HikariDataSource many, HikariDataSource one) {
    Jdbi reading = Jdbi.create(many);
    reading.setSqlLogger(new ReadingOnly());
    Jdbi writing = Jdbi.create(one);
    Moments.registerWith(reading);
    Moments.registerWith(writing);
    return new Access(reading, writing);
  }

  <T> T read(HandleCallback<T, RuntimeException> query) {
    return reading.withHandle(query);
  }

  /** Writes all or nothing. */
  void write(HandleConsumer<RuntimeException> change) {
    writing.useTransaction(change);
  }

  /** As {@link #write}, and tells what came of it. */
  <T> T writeAndTell(HandleCallback<T, RuntimeException> change) {
    return writing.inTransaction(change);
  }
}
