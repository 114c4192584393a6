package withy;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: wires everything, knows everyone, decides nothing. */
@Command(
    name = "withy",
    description = "A drill server for instructors who teach navigation marks.",
    mixinStandardHelpOptions = true,
    subcommands = {})
public final class Main {
  private Main() {}

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }
}
