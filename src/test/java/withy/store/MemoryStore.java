package withy.store;

import java.nio.file.Path;
import java.util.UUID;

/** Stores that live in memory, with the tables of the real ones. */
public final class MemoryStore {
  private MemoryStore() {}

  /** A new and empty store. */
  public static Store create() {
    String url = "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";
    return Store.over(url, DataFolder.of(Path.of(System.getProperty("java.io.tmpdir"))));
  }
}
