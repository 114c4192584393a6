package withy.browser;

import java.time.Duration;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chromium.HasCdp;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A browser in somebody's hands: what they read, type and press, each page checked as it comes. */
final class Window implements AutoCloseable {
  /** The narrowest phone that people have. */
  static final int PHONE = 360;

  static final int LAPTOP = 1280;

  private static final int HEIGHT = 780;
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final Duration LOOK_AGAIN = Duration.ofMillis(50);

  private final WebDriver driver;
  private final String server;
  private boolean scripts = true;

  private Window(WebDriver driver, int port) {
    this.driver = driver;
    this.server = "http://127.0.0.1:" + port;
  }

  /** A new window of a browser without any cookies. */
  static Window open(int port, int width) {
    Window window = new Window(Browser.open(), port);
    window.resize(width);
    return window;
  }

  /** As wide as a screen; browsers themselves do not open windows as narrow as a phone. */
  void resize(int width) {
    if (driver instanceof HasCdp chromium) {
      chromium.executeCdpCommand(
          "Emulation.setDeviceMetricsOverride",
          Map.of("width", width, "height", HEIGHT, "deviceScaleFactor", 1, "mobile", false));
    } else {
      driver.manage().window().setSize(new Dimension(width, HEIGHT));
    }
  }

  /** Runs no script of any page from now on, where the browser can be told so. */
  void turnScriptsOff() {
    if (driver instanceof HasCdp chromium) {
      chromium.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
      scripts = false;
      driver.get("data:text/html,<title>off</title><script>document.title='on'</script>");
      if (!"off".equals(driver.getTitle())) {
        throw new IllegalStateException("the browser still runs scripts");
      }
    }
  }

  boolean runsScripts() {
    return scripts;
  }

  WebDriver driver() {
    return driver;
  }

  void go(String path) {
    driver.get(server + path);
  }

  String path() {
    return driver.getCurrentUrl().substring(server.length());
  }

  /** Waits for a page that has it. */
  WebElement see(String selector) {
    return new WebDriverWait(driver, PATIENCE, LOOK_AGAIN)
        .until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(selector)));
  }

  boolean has(String selector) {
    return !driver.findElements(By.cssSelector(selector)).isEmpty();
  }

  String text(String selector) {
    return see(selector).getText();
  }

  void type(String name, String text) {
    WebElement field = see("input[name='" + name + "']");
    field.clear();
    field.sendKeys(text);
  }

  /** Chooses a box or a dot of a form by its value. */
  void choose(String name, String value) {
    press("label:has(input[name='" + name + "'][value='" + value + "'])");
  }

  void press(String selector) {
    see(selector).click();
  }

  /** Presses what leads to another page, and waits for it. */
  void follow(String selector) {
    WebElement before = see("html");
    press(selector);
    new WebDriverWait(driver, PATIENCE, LOOK_AGAIN).until(any -> isGone(before));
    see("footer");
  }

  /** Whether the page of an element is gone; in mid-change Chromium says so in words of its own. */
  private static boolean isGone(WebElement before) {
    try {
      before.isEnabled();
      return false;
    } catch (StaleElementReferenceException gone) {
      return true;
    } catch (WebDriverException changing) {
      String said = String.valueOf(changing.getMessage());
      if (said.contains("does not belong to the document")) {
        return true;
      }
      throw changing;
    }
  }

  /** The session that this browser has. */
  String session() {
    Cookie cookie = driver.manage().getCookieNamed("sid");
    return cookie == null ? "" : cookie.getValue();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
