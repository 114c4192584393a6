package withy.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.firefox.FirefoxDriver;
import org.openqa.selenium.firefox.FirefoxOptions;

/** Opens the headless browser that {@link BrowserSetup} found or brought. */
final class Browser {
  private static final List<String> CHROMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");
  private static final List<String> FLAGS =
      List.of(
          "--headless=new",
          "--disable-gpu",
          "--disable-dev-shm-usage",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-default-apps",
          "--hide-scrollbars");

  private Browser() {}

  /** A driver for an installed browser, if there is one. */
  static Optional<Supplier<WebDriver>> installed() {
    Optional<Path> chrome = BrowserSetup.program(CHROMES);
    if (chrome.isPresent()) {
      return Optional.of(() -> chrome(chrome.get()));
    }
    return BrowserSetup.program(List.of("firefox", "firefox-esr")).map(path -> () -> firefox(path));
  }

  /** Whether Selenium's own manager could bring a browser. */
  static boolean fetchedBySelenium() {
    try {
      fetched().quit();
      return true;
    } catch (RuntimeException e) {
      return false;
    }
  }

  /** Opens a window; the caller quits the driver. */
  static WebDriver open() {
    return installed().map(Supplier::get).orElseGet(Browser::fetched);
  }

  private static WebDriver fetched() {
    ChromeOptions options = options();
    options.setBrowserVersion("stable");
    return new ChromeDriver(options);
  }

  private static WebDriver chrome(Path binary) {
    ChromeOptions options = options();
    options.setBinary(binary.toFile());
    ChromeDriverService.Builder service = new ChromeDriverService.Builder();
    BrowserSetup.program(List.of("chromedriver"))
        .ifPresent(driver -> service.usingDriverExecutable(driver.toFile()));
    return new ChromeDriver(service.build(), options);
  }

  private static ChromeOptions options() {
    ChromeOptions options = new ChromeOptions();
    options.addArguments(FLAGS);
    if ("root".equals(System.getProperty("user.name"))) {
      options.addArguments("--no-sandbox");
    }
    try {
      options.addArguments("--user-data-dir=" + Files.createTempDirectory("withy-browser"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return options;
  }

  private static WebDriver firefox(Path binary) {
    FirefoxOptions options = new FirefoxOptions();
    options.setBinary(binary);
    options.addArguments("-headless");
    return new FirefoxDriver(options);
  }
}
