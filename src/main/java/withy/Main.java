package withy;

import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.Spec;
import withy.wording.Wording;

/** The command line: wires everything, knows everyone, decides nothing. */
@Command(
    name = "withy",
    description = "A drill server for instructors who teach navigation marks.",
    mixinStandardHelpOptions = true,
    version = "withy 0.3.0",
    subcommands = {
      ServeCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      LightCommand.class,
      MarkCommand.class,
      ReviewCommand.class,
      SimulateCommand.class,
      ScenariosCommand.class
    })
public final class Main implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  private Main() {}

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] args) {
    System.exit(commandLine().execute(args));
  }

  /** All commands, with one line on standard error for whatever goes wrong. */
  static CommandLine commandLine() {
    return new CommandLine(new Main())
        .setExecutionStrategy(Main::carriedOut)
        .setParameterExceptionHandler(Main::refused)
        .setExecutionExceptionHandler(Main::failed);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing: try --help");
  }

  /** A result that did not reach its reader whole, as on a full disk, is no result. */
  private static int carriedOut(ParseResult parsed) {
    int status = new RunLast().execute(parsed);
    if (status == ExitCode.OK && System.out.checkError()) {
      String lost = Wording.of(Locale.ENGLISH).text("command-line.output-lost");
      parsed.commandSpec().commandLine().getErr().println(lost);
      return ExitCode.SOFTWARE;
    }
    return status;
  }

  private static int refused(ParameterException problem, String[] args) {
    CommandLine command = problem.getCommandLine();
    command.getErr().println(command.getCommandName() + ": " + oneLine(problem));
    return ExitCode.USAGE;
  }

  private static int failed(Exception problem, CommandLine command, ParseResult parsed) {
    command.getErr().println(command.getCommandName() + ": " + oneLine(problem));
    return ExitCode.SOFTWARE;
  }

  private static String oneLine(Exception problem) {
    String message = problem.getMessage();
    return message == null ? problem.toString() : message.replaceAll("\\s*\\R\\s*", "; ");
  }
}
