package withy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import withy.store.Backup;
import withy.store.RunningServer;
import withy.store.StoreRefused;
import withy.store.StoreRefused.Problem;
import withy.wording.Wording;

/** Copies the database, by the server that has it open if there is one. */
@Command(
    name = "backup",
    description = "Writes a consistent copy of the database, also while the server runs.",
    mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
  @Spec private @Nullable CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The copy, a zip file that is not there yet.")
  private Path file = Path.of("");

  @Option(
      names = "--data",
      paramLabel = "DIR",
      defaultValue = "withy-data",
      description = "Folder of the database; ${DEFAULT-VALUE} unless given.")
  private Path data = Path.of("");

  @Override
  public Integer call() throws InterruptedException {
    try {
      Backup.write(data, file);
      return CommandLine.ExitCode.OK;
    } catch (StoreRefused refused) {
      Optional<RunningServer> server =
          refused.problem() == Problem.IN_USE ? RunningServer.of(data) : Optional.empty();
      return server.isPresent() ? ask(server.get()) : refuse(refused);
    }
  }

  private int ask(RunningServer server) throws InterruptedException {
    Wording wording = Wording.of(Locale.ENGLISH);
    try {
      Optional<String> refusal = BackupRequest.to(server).copyTo(file.toAbsolutePath().normalize());
      return refusal.isEmpty()
          ? CommandLine.ExitCode.OK
          : fail(wording.text("data.server-refused", refusal.get()), CommandLine.ExitCode.SOFTWARE);
    } catch (IOException silent) {
      String sentence = wording.text("data.server-silent", server.address().toString());
      return fail(sentence, CommandLine.ExitCode.SOFTWARE);
    }
  }

  private int refuse(StoreRefused refused) {
    boolean argument = refused.problem().blamesArguments();
    int status = argument ? CommandLine.ExitCode.USAGE : CommandLine.ExitCode.SOFTWARE;
    return fail(refused.sentence(Locale.ENGLISH), status);
  }

  private int fail(String sentence, int status) {
    CommandLine line = Objects.requireNonNull(spec).commandLine();
    line.getErr().println(sentence.replaceAll("\\R", " "));
    return status;
  }
}
