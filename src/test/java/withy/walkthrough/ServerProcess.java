package withy.walkthrough;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The program as people start it: the one jar, in a process of its own. */
public final class ServerProcess implements AutoCloseable {
  private static final String LISTENING = "listening on http://";
  private static final String SET_UP_CODE = "set-up code: ";

  private final Process process;
  private final int port;
  private final @Nullable String setUpCode;

  private ServerProcess(Process process, int port, @Nullable String setUpCode) {
    this.process = process;
    this.port = port;
    this.setUpCode = setUpCode;
  }

  /** Starts the server on a data folder and waits until it says that it listens. */
  public static ServerProcess on(Path data) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                Path.of("target", "withy.jar").toString(),
                "serve",
                "--host=127.0.0.1",
                "--port=0",
                "--data=" + data)
            .redirectErrorStream(true)
            .start();
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    List<String> said = new ArrayList<>();
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      said.add(line);
      if (line.startsWith(LISTENING)) {
        drain(out);
        int port = Integer.parseInt(line.substring(line.lastIndexOf(':') + 1));
        return new ServerProcess(process, port, after(SET_UP_CODE, said));
      }
    }
    throw new IllegalStateException("the server does not listen: " + said);
  }

  private static @Nullable String after(String start, List<String> said) {
    return said.stream()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()))
        .findFirst()
        .orElse(null);
  }

  /** Whoever prints into a full pipe stands still. */
  private static void drain(BufferedReader out) {
    Thread reader = new Thread(() -> out.lines().forEach(line -> {}), "drain");
    reader.setDaemon(true);
    reader.setUncaughtExceptionHandler((thread, closed) -> {});
    reader.start();
  }

  public int port() {
    return port;
  }

  /** The code that it printed; null if it is set up. */
  public @Nullable String setUpCode() {
    return setUpCode;
  }

  /** Ends the process at once, as a loss of power does: it writes and closes nothing more. */
  @Override
  public void close() {
    process.destroyForcibly();
    try {
      process.waitFor();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    try {
      process.getInputStream().close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
