package withy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.web.Browser;

/** The command as a process of its own. */
class ServeCommandIT {
  @TempDir private Path folder;
  private final List<Process> started = new ArrayList<>();

  @AfterEach
  void end() {
    started.forEach(Process::destroyForcibly);
  }

  @Test
  void saysWhereItListensAndStopsInOrderWhenTold() throws Exception {
    Process server = serve("--port", "0", "--data", folder.resolve("data").toString());
    List<String> lines = linesUntilReady();
    assertThat(lines).filteredOn(line -> line.startsWith("set-up code: ")).hasSize(1);
    assertThat(lines).filteredOn(line -> line.startsWith("listening on ")).hasSize(1);
    assertThat(lines).noneMatch(line -> line.startsWith("class code: "));
    assertThat(lines).allMatch(line -> line.matches("(set-up code: |listening on |open ).*"));
    Browser browser = new Browser(port(lines));
    assertThat(browser.get("/health").statusCode()).isEqualTo(200);
    server.destroy();
    assertThat(server.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(server.exitValue()).isZero();
    assertThat(folder.resolve("data/running-server")).doesNotExist();
  }

  @Test
  void addsAnInventedClassWhereThereIsNothing() throws Exception {
    serve("--port", "0", "--data", folder.resolve("data").toString(), "--demo");
    List<String> lines = linesUntilReady();
    String code =
        lines.stream().filter(line -> line.startsWith("class code: ")).findFirst().orElseThrow();
    Browser learner = new Browser(port(lines));
    String json =
        ClubServer.quoted(
            "{'code':'%s','nickname':'Newcomer'}"
                .formatted(code.substring("class code: ".length())));
    assertThat(learner.postJson("/api/join", json).statusCode()).isEqualTo(201);
  }

  @Test
  void saysInOneLineThatThePortIsInUse() throws Exception {
    try (ServerSocket taken = new ServerSocket(0)) {
      String port = Integer.toString(taken.getLocalPort());
      Process server = serve("--port", port, "--data", folder.resolve("data").toString());
      assertThat(server.waitFor(30, TimeUnit.SECONDS)).isTrue();
      assertThat(server.exitValue()).isEqualTo(1);
      assertThat(out()).isEmpty();
      assertThat(Files.readAllLines(folder.resolve("err")))
          .hasSize(1)
          .first()
          .asString()
          .contains(port);
    }
  }

  @Test
  void saysInOneLineThatTheDataFolderIsInUse() throws Exception {
    String data = folder.resolve("data").toString();
    serve("--port", "0", "--data", data);
    linesUntilReady();
    Process second = serve("--port", "0", "--data", data);
    assertThat(second.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(second.exitValue()).isEqualTo(1);
    assertThat(Files.readAllLines(folder.resolve("err"))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--port 70707", "--port x", "--host no.such.host.invalid", "--nonsense"})
  void refusesArgumentsThatDoNotDo(String arguments) throws Exception {
    Process server = serve(arguments.split(" "));
    assertThat(server.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(server.exitValue()).isEqualTo(2);
    assertThat(Files.readAllLines(folder.resolve("err"))).hasSize(1);
    assertThat(out()).isEmpty();
  }

  private Process serve(String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dlogback.configurationFile=logback.xml"); // not that of the tests
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "withy.Main", "serve"));
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(folder.resolve("out").toFile())
            .redirectError(folder.resolve("err").toFile())
            .start();
    started.add(process);
    return process;
  }

  private List<String> linesUntilReady() throws Exception {
    for (int tries = 0; tries < 1200; tries++) {
      List<String> lines = out();
      if (lines.stream().anyMatch(line -> line.startsWith("listening on "))) {
        return lines;
      }
      Thread.sleep(50);
    }
    throw new AssertionError("not ready: " + Files.readString(folder.resolve("err")));
  }

  private List<String> out() throws IOException {
    return Files.readAllLines(folder.resolve("out"));
  }

  private static int port(List<String> lines) {
    String listening = lines.get(lines.size() - 1);
    assertThat(listening).matches("listening on http://0\\.0\\.0\\.0:\\d+");
    return Integer.parseInt(listening.substring(listening.lastIndexOf(':') + 1));
  }
}
