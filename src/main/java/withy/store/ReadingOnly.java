package withy.store;

import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.StatementContext;

/** Lets nothing but queries through that lock nothing. */
final class ReadingOnly implements SqlLogger {
  /**
   * @throws IllegalStateException if it is no such query
   */
  @Override
  public void logBeforeExecution(StatementContext context) {
    String sql = String.valueOf(context.getRawSql()).strip();
    if (!sql.startsWith("SELECT") || sql.contains("FOR UPDATE")) {
      throw new IllegalStateException("only a writing connection may " + sql);
    }
  }
}
