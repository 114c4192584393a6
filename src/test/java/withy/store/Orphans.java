package withy.store;

import java.nio.file.Path;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Counts what a torn copy would hold: responses to items that are not there. */
final class Orphans {
  private Orphans() {}

  static int in(Path folder) {
    String url = DataFolder.of(folder).url();
    try (Handle handle = Jdbi.open(() -> Database.connect(url))) {
      return handle
          .createQuery(
              """
              SELECT COUNT(*) FROM response r
              WHERE NOT EXISTS (SELECT 1 FROM issued_item i WHERE i.id = r.item)
              """)
          .mapTo(Integer.class)
          .one();
    } finally {
      Database.shutDown(url);
    }
  }
}
