package withy.store;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Locale;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import withy.usecase.BackupOffice;
import withy.usecase.Reason;
import withy.usecase.Refused;
import withy.usecase.Secrets;

/** Makes copies for whoever can read the data folder. */
final class Copies implements BackupOffice {
  private final DataSource database;
  private final DataFolder folder;
  private final String token = Secrets.secure().token();
  private @Nullable RunningServer announced;

  Copies(DataSource database, DataFolder folder) {
    this.database = database;
    this.folder = folder;
  }

  @Override
  public synchronized long backUp(Path file) {
    try {
      return Copy.write(database, file);
    } catch (StoreRefused e) {
      throw new Refused(Reason.COPY_REFUSED, e.sentence(Locale.getDefault()));
    }
  }

  @Override
  public boolean admits(String claimed) {
    return MessageDigest.isEqual(bytes(token), bytes(claimed));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public synchronized void announce(URI address) {
    announced = new RunningServer(address, token);
    announced.writeTo(folder.announcement());
  }

  synchronized void close() {
    if (announced != null) {
      RunningServer.remove(folder.announcement());
    }
  }
}
