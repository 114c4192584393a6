package withy.store;

import java.nio.file.Path;
import java.time.Clock;

/** Tries to open a data folder, and says why it cannot. */
final class OtherProgram {
  private OtherProgram() {}

  public static void main(String[] args) {
    try {
      Store.open(Path.of(args[0]), Clock.systemUTC()).close();
      System.out.println("OPENED");
    } catch (StoreRefused e) {
      System.out.println(e.problem());
    }
  }
}
