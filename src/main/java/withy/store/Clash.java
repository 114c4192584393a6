package withy.store;

import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleConsumer;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/** Lets the keys of the database decide who was first, where looking before would be too early. */
final class Clash {
  private static final String UNIQUE_KEY = "23505";
  private static final String FOREIGN_KEY = "23506";
  private static final String FOREIGN_KEY_OF_OTHERS = "23503";

  private Clash() {}

  /** Whether the work was done; false if a unique or a foreign key forbade it. */
  static boolean free(Access access, HandleConsumer<RuntimeException> work) {
    return access.writeAndTell(handle -> free(handle, work));
  }

  /** As {@link #free(Access, HandleConsumer)}, as a part of a transaction. */
  static boolean free(Handle handle, HandleConsumer<RuntimeException> work) {
    try {
      work.useHandle(handle);
      return true;
    } catch (UnableToExecuteStatementException e) {
      if (isClash(e)) {
        return false;
      }
      throw e;
    }
  }

  private static boolean isClash(UnableToExecuteStatementException e) {
    return e.getCause() instanceof SQLException cause
        && (UNIQUE_KEY.equals(cause.getSQLState())
            || FOREIGN_KEY.equals(cause.getSQLState())
            || FOREIGN_KEY_OF_OTHERS.equals(cause.getSQLState()));
  }
}
