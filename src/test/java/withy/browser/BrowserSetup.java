package withy.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Brings the browser that the browser tests drive: one that is installed; else, on Debian as root,
 * the distribution's Chromium; else what Selenium's own manager fetches; else one line that says
 * what to install.
 */
public final class BrowserSetup {
  private BrowserSetup() {}

  /** Ends the build with one line if no browser can be had. */
  public static void main(String[] args) throws Exception {
    if (Browser.installed().isPresent()) {
      return;
    }
    if (isDebian() && isRoot()) {
      run("apt-get", "update", "-qq");
      run("apt-get", "install", "-y", "-qq", "chromium", "chromium-driver");
    }
    if (Browser.installed().isEmpty() && !Browser.fetchedBySelenium()) {
      throw new IllegalStateException(
          "The browser tests need Chromium, Chrome or Firefox: install one, for instance with"
              + " 'apt-get install chromium chromium-driver', and run the command again.");
    }
  }

  private static boolean isDebian() {
    return Files.exists(Path.of("/etc/debian_version"));
  }

  private static boolean isRoot() {
    return "root".equals(System.getProperty("user.name"));
  }

  private static void run(String... command) throws IOException, InterruptedException {
    ProcessBuilder process = new ProcessBuilder(command).redirectErrorStream(true);
    process.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    process.environment().put("DEBIAN_FRONTEND", "noninteractive");
    process.start().waitFor();
  }

  /** The first of the programs that this machine has. */
  static Optional<Path> program(List<String> names) {
    String[] folders = System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator);
    for (String name : names) {
      for (String folder : folders) {
        Path candidate = Path.of(folder, name);
        if (Files.isExecutable(candidate)) {
          return Optional.of(candidate);
        }
      }
    }
    return Optional.empty();
  }
}
