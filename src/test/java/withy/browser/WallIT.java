package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chromium.HasCdp;
import org.openqa.selenium.support.ui.WebDriverWait;
import withy.InProcessServer;

/**
 * The wall in a browser: the boat runs by key, the region is swapped, a mark is taken away, an item
 * goes to the room, two learners answer it on phones and their tracks appear.
 */
class WallIT {
  private static final String WATER = "/wall?water=harbour-entrance-1";
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private static final String SMALLEST_WORDS =
      """
      return Math.min(...[...document.querySelectorAll('.panel :is(h1, p, dt, dd, a, button, summary)')]
        .filter(each => each.offsetParent !== null)
        .map(each => parseFloat(getComputedStyle(each).fontSize)));
      """;

  /** CSS pixels squared of all lights on the chart, each as large as its softest ring. */
  private static final String LIT =
      """
      return [...document.querySelectorAll('#water g:has(> animate)')].reduce((sum, light) => {
        const width = Math.max(...[...light.querySelectorAll('path')]
          .map(each => parseFloat(each.getAttribute('stroke-width'))));
        return sum + Math.PI * width * width / 4;
      }, 0);
      """;

  private static final double SAFE_AREA = 21_824;

  @TempDir private Path data;

  @Test
  void teachesAClassWithAStretchOfWater() throws Exception {
    try (InProcessServer server = InProcessServer.on(data);
        Window wall = Window.open(server.port(), Window.LAPTOP)) {
      String code = begin(wall, server.useCases().setUp().code());
      runsByKey(wall);
      looksByKeyAndByPressing(wall);
      swapsTheRegion(wall);
      takesAMarkAway(wall);
      darkens(wall);
      standsStillForThoseWhoWantNoMotion(wall);
      putsAnItemToTheRoom(server, wall, code);
      asksAnotherLikeIt(server, wall, code);
    }
  }

  private static String begin(Window wall, String setUp) {
    wall.go("/set-up");
    wall.type("code", setUp);
    wall.type("name", "Marlo");
    wall.type("password", "a long walk on the pier");
    wall.follow("form[action='/set-up'] button");
    wall.type("name", "Tuesday evening");
    wall.choose("practice", "iala-a");
    wall.follow("form[action='/classes'] button");
    String code = wall.text("p.code-shown");
    wall.follow("a[href^='/wall']");
    wall.go(WATER);
    PageCheck.accessibleEverywhere(wall);
    assertThat(((Number) script(wall, SMALLEST_WORDS)).doubleValue()).isGreaterThanOrEqualTo(24);
    return code;
  }

  private static Object script(Window window, String code) {
    return ((JavascriptExecutor) window.driver()).executeScript(code);
  }

  private static String boat(Window wall) {
    return wall.see(".boat").getAttribute("transform");
  }

  private static void press(Window wall, CharSequence key) {
    wall.see("#water").sendKeys(key);
  }

  private static void runsByKey(Window wall) {
    String before = boat(wall);
    press(wall, Keys.SPACE);
    until(wall, "the boat runs to the first mark", () -> wall.text(".order").startsWith("Leave"));
    press(wall, Keys.SPACE);
    assertThat(boat(wall)).isNotEqualTo(before);
    String held = boat(wall);
    press(wall, Keys.PAGE_DOWN);
    assertThat(boat(wall)).isNotEqualTo(held);
    assertThat(wall.path()).contains("step=");
    String called = wall.text("#call");
    press(wall, Keys.PAGE_UP);
    press(wall, Keys.PAGE_DOWN);
    assertThat(wall.text("#call")).isEqualTo(called);
    wall.go(wall.path());
    assertThat(wall.text("#call")).as("the address holds it").isEqualTo(called);
  }

  private static void looksByKeyAndByPressing(Window wall) {
    String before = wall.text("#looked");
    press(wall, Keys.ARROW_UP);
    until(wall, "the cross tells a depth", () -> !wall.text("#looked").equals(before));
    assertThat(wall.see(".cross").getAttribute("visibility")).isEqualTo("visible");
    String moved = wall.see(".cross").getAttribute("transform");
    wall.press("#water");
    until(
        wall,
        "the cross goes where one presses",
        () -> !moved.equals(wall.see(".cross").getAttribute("transform")));
  }

  private static void swapsTheRegion(Window wall) {
    wall.go(WATER + "&step=2");
    String kept = wall.text(".order");
    String mark = wall.text(".called");
    wall.follow(".choices a[href*='practice=iala-b']");
    assertThat(wall.text(".order")).isEqualTo(kept);
    assertThat(wall.text(".called")).isNotEqualTo(mark);
  }

  private static void takesAMarkAway(Window wall) {
    wall.press("details:has(.links.keep) summary");
    wall.follow(".links.keep a");
    assertThat(wall.text(".away")).contains("What stood here");
    PageCheck.accessible(wall);
    wall.follow(".away .button");
    assertThat(wall.text(".away")).contains("Here stood");
    wall.follow(".away a");
    assertThat(wall.has(".away")).isFalse();
  }

  private static void darkens(Window wall) {
    wall.follow(".choices a[href*='time=night']");
    PageCheck.accessibleEverywhere(wall);
    double lit = ((Number) script(wall, LIT)).doubleValue();
    assertThat(lit).isPositive().isLessThan(SAFE_AREA / 16);
  }

  private static void standsStillForThoseWhoWantNoMotion(Window wall) {
    if (wall.driver() instanceof HasCdp chromium) {
      Map<String, Object> wish = Map.of("name", "prefers-reduced-motion", "value", "reduce");
      chromium.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(wish)));
      wall.go(WATER);
      assertThat(wall.see("#run").isDisplayed()).isFalse();
      press(wall, Keys.SPACE);
      assertThat(wall.path()).as("only steps").contains("step=1");
      chromium.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of()));
    }
  }

  private static void putsAnItemToTheRoom(InProcessServer server, Window wall, String code) {
    wall.go(WATER + "&step=3");
    wall.press("#ask summary");
    wall.follow("#ask form button");
    assertThat(wall.text("#count")).startsWith("0 of 0");
    PageCheck.accessibleEverywhere(wall);
    answer(server, code, "Avocet", 0);
    answer(server, code, "Coot", 1);
    until(wall, "the wall counts", () -> wall.text("#count").startsWith("2 of 2"));
    wall.follow("form.doing button");
    assertThat(wall.driver().findElements(By.cssSelector(".tally dd")))
        .extracting(each -> each.getText())
        .containsExactly("1", "1", "0");
    assertThat(script(wall, "return document.querySelectorAll('.water svg + svg circle').length"))
        .as("a ring and two counts beside their tracks")
        .isEqualTo(3L);
    assertThat(wall.text("main")).doesNotContain("Avocet", "Coot");
    PageCheck.accessibleEverywhere(wall);
  }

  private static void asksAnotherLikeIt(InProcessServer server, Window wall, String code) {
    String before = wall.path();
    wall.follow("form[action*='/like'] button");
    assertThat(wall.path()).startsWith("/wall/room/").isNotEqualTo(before);
    answer(server, code, "Dunlin", 0);
    until(wall, "the wall counts", () -> wall.text("#count").startsWith("1 of 3"));
    wall.follow("form.doing button");
    assertThat(wall.text(".panel")).contains("for the first time: 1");
    PageCheck.accessibleEverywhere(wall);
  }

  private static void answer(InProcessServer server, String code, String nickname, int option) {
    try (Window phone = Window.open(server.port(), Window.PHONE)) {
      phone.go("/join/" + code);
      phone.type("nickname", nickname);
      phone.follow("form[action='/join'] button");
      phone.go("/drills");
      PageCheck.accessible(phone);
      phone.follow(".on-wall a");
      phone.driver().findElements(By.cssSelector(".options label")).get(option).click();
      phone.follow("form.answer button");
      assertThat(phone.path()).contains("/items/");
    }
  }

  private static void until(Window window, String what, BooleanSupplier seen) {
    new WebDriverWait(window.driver(), PATIENCE)
        .withMessage(what)
        .until(any -> seen.getAsBoolean());
  }
}
