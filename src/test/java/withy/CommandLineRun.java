package withy;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** A command as somebody types it: what it printed, to the byte. */
public final class CommandLineRun {
  private final int status;
  private final byte[] printed;

  private CommandLineRun(int status, byte[] printed) {
    this.status = status;
    this.printed = printed;
  }

  public static CommandLineRun of(String... args) {
    PrintStream console = System.out;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    try {
      return new CommandLineRun(Main.commandLine().execute(args), out.toByteArray());
    } finally {
      System.setOut(console);
    }
  }

  public int status() {
    return status;
  }

  public byte[] printed() {
    return printed.clone();
  }
}
