package withy.usecase;

import java.net.URI;
import java.nio.file.Path;

/** Copies all that is kept while it is in use. */
public interface BackupOffice {
  /**
   * Writes a consistent copy to a new file, and proves that it can be restored.
   *
   * @return rows copied
   * @throws Refused COPY_REFUSED if the file is there already or cannot be written
   */
  long backUp(Path file);

  /**
   * Tells commands of whoever can read the data folder where the server is to be asked for a copy.
   *
   * @param address as this machine reaches it, without a path
   */
  void announce(URI address);

  /** Whether this is the secret that only the owner of the data folder can read. */
  boolean admits(String token);
}
