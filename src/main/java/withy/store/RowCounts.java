package withy.store;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** How many rows every table of a database holds. */
final class RowCounts {
  static final String RESPONSES = "RESPONSE";

  private RowCounts() {}

  static Map<String, Long> of(Handle handle) {
    Map<String, Long> counts = new TreeMap<>();
    for (String table : tables(handle)) {
      // a name cannot be bound; it comes from the catalogue of the database, quoted by itself
      counts.put(
          table,
          handle
              .createQuery("SELECT COUNT(*) FROM <table>")
              .define("table", quoted(handle, table))
              .mapTo(Long.class)
              .one());
    }
    return counts;
  }

  private static List<String> tables(Handle handle) {
    return handle
        .createQuery(
            """
            SELECT table_name FROM information_schema.tables
            WHERE table_schema = 'PUBLIC' AND table_type = 'BASE TABLE' ORDER BY table_name
            """)
        .mapTo(String.class)
        .list();
  }

  private static String quoted(Handle handle, String table) {
    return handle
        .createQuery("SELECT QUOTE_IDENT(:table)")
        .bind("table", table)
        .mapTo(String.class)
        .one();
  }
}
