package withy;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: wires everything, knows everyone, decides nothing. */
@Command(
    name = "withy",
    description = "A drill server for instructors who teach navigation marks.",
    mixinStandardHelpOptions = true,
    subcommands = {ServeCommand.class, MarkCommand.class, ReviewCommand.class})
public final class Main {
  private Main() {}

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] args) {
    System.exit(commandLine().execute(args));
  }

  /** All commands; what is wrong with their arguments is said in one line. */
  static CommandLine commandLine() {
    return new CommandLine(new Main()).setParameterExceptionHandler(Main::refuse);
  }

  private static int refuse(CommandLine.ParameterException wrong, String[] args) {
    String line = String.valueOf(wrong.getMessage()).replaceAll("\\R", " ");
    wrong.getCommandLine().getErr().println(line);
    return CommandLine.ExitCode.USAGE;
  }
}
