package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jspecify.annotations.Nullable;

/** Moments go in and out as UTC, so that no time zone of the machine moves them. */
final class Moments {
  private Moments() {}

  static void registerWith(Jdbi jdbi) {
    jdbi.registerArgument(new InUtc());
  }

  /**
   * The moment in a column that is never null.
   *
   * @throws SQLException if there is no such column
   */
  static Instant read(ResultSet row, String column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }

  /**
   * The moment in a column, or null.
   *
   * @throws SQLException if there is no such column
   */
  static @Nullable Instant readOptional(ResultSet row, String column) throws SQLException {
    OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
    return moment == null ? null : moment.toInstant();
  }

  private static final class InUtc extends AbstractArgumentFactory<Instant> {
    InUtc() {
      super(Types.TIMESTAMP_WITH_TIMEZONE);
    }

    @Override
    protected Argument build(Instant value, ConfigRegistry config) {
      return (position, statement, context) ->
          statement.setObject(position, value.atOffset(ZoneOffset.UTC));
    }
  }
}
