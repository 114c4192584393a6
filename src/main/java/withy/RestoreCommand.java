package withy;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import withy.store.Backup;
import withy.store.StoreRefused;

/** Makes the database of an empty data folder from a copy. */
@Command(
    name = "restore",
    description = "Makes the database of an empty data folder from a copy.",
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
  @Spec private @Nullable CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "A copy that backup wrote.")
  private Path file = Path.of("");

  @Option(
      names = "--data",
      paramLabel = "DIR",
      defaultValue = "withy-data",
      description = "Folder for the database, empty or not there; ${DEFAULT-VALUE} unless given.")
  private Path data = Path.of("");

  @Override
  public Integer call() {
    try {
      Backup.restore(file, data, Clock.systemUTC());
      return CommandLine.ExitCode.OK;
    } catch (StoreRefused refused) {
      String line = refused.sentence(Locale.ENGLISH).replaceAll("\\R", " ");
      Objects.requireNonNull(spec).commandLine().getErr().println(line);
      // a copy of a newer version, too, is a bad input file
      boolean failed = refused.problem() == StoreRefused.Problem.UNWRITABLE;
      return failed ? CommandLine.ExitCode.SOFTWARE : CommandLine.ExitCode.USAGE;
    }
  }
}
