package withy.usecase;

import java.nio.file.Path;

/** Copies all that is kept while it is in use. */
public interface BackupOffice {
  /**
   * Writes a consistent copy to a new file, and proves that it can be restored.
   *
   * @return rows copied
   * @throws Refused MALFORMED if the file is there already or cannot be written
   */
  long backUp(Path file);

  /** Whether this is the secret that only the owner of the data folder can read. */
  boolean admits(String token);
}
