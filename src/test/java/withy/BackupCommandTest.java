package withy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.store.Store;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.web.Limits;
import withy.web.Server;

class BackupCommandTest {
  private static final Clock CLOCK = Clock.systemUTC();

  @TempDir Path temp;

  private record Outcome(int status, String said) {}

  @Test
  void copiesWhatARunningServerHasOpenAndBringsItBack() throws Exception {
    Path data = temp.resolve("data");
    Path copy = temp.resolve("copy.zip");
    SchoolClass tuesday;
    try (Store store = Store.open(data, CLOCK)) {
      School school = School.over(store.ports());
      tuesday = school.schoolClass();
      Server server =
          Server.start(
              "127.0.0.1",
              0,
              new Wiring(CLOCK, Limits.onSystemTime()).parts(school.cases(), store));
      assertThat(inUse(copy, data).said()).contains("is open in another program");
      store.backupOffice().announce(URI.create("http://127.0.0.1:" + server.port()));

      assertThat(run("backup", copy.toString(), "--data", data.toString()))
          .isEqualTo(new Outcome(0, ""));
      server.stop();
      Outcome unanswered = inUse(temp.resolve("other.zip"), data);
      assertThat(unanswered.said()).contains("does not answer").doesNotContain("\n");
    }

    Path back = temp.resolve("back");
    assertThat(run("restore", copy.toString(), "--data", back.toString()))
        .isEqualTo(new Outcome(0, ""));
    try (Store store = Store.open(back, CLOCK)) {
      assertThat(store.ports().classes().find(tuesday.id())).contains(tuesday);
    }
  }

  private Outcome inUse(Path copy, Path data) throws Exception {
    Outcome outcome = run("backup", copy.toString(), "--data", data.toString());
    assertThat(outcome.status()).isEqualTo(1);
    return outcome;
  }

  @Test
  void refusesWrongFilesAndFoldersInOneLine() throws Exception {
    Path there = Files.writeString(temp.resolve("there.zip"), "mine");

    Outcome noDatabase =
        here("backup", temp.resolve("new.zip").toString(), "--data", temp.resolve("no").toString());
    Outcome overwritten = here("backup", there.toString(), "--data", temp.toString());
    Outcome notEmpty = here("restore", there.toString(), "--data", temp.toString());
    Outcome noCopy = here("restore", there.toString(), "--data", temp.resolve("no").toString());

    assertThat(List.of(noDatabase, overwritten, notEmpty, noCopy))
        .allMatch(each -> each.status() == 2 && each.said().lines().count() == 1);
    assertThat(noDatabase.said()).contains("holds no database");
    assertThat(overwritten.said()).contains("is there already");
    assertThat(notEmpty.said()).contains("is not empty");
    assertThat(noCopy.said()).contains("is no copy");
    assertThat(there).hasContent("mine");
  }

  /** In this program. */
  private static Outcome here(String... arguments) {
    StringWriter said = new StringWriter();
    int status = Main.commandLine().setErr(new PrintWriter(said, true)).execute(arguments);
    return new Outcome(status, said.toString().strip());
  }

  /** In another program, which cannot share the database that this one has open. */
  private static Outcome run(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add("withy.Main");
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Outcome(process.waitFor(), said.strip());
  }
}
