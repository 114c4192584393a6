package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.JavascriptExecutor;
import withy.InProcessServer;
import withy.core.mark.Practice;

/** The reference in a browser: every kind of its pages, for everybody, on a phone and a wall. */
class ReferenceIT {
  private static final String SMALLEST_WORDS =
      """
      return Math.min(...[...document.querySelectorAll('main h1, main h2, main p, main .name, main .note')]
        .filter(each => each.offsetParent !== null)
        .map(each => parseFloat(getComputedStyle(each).fontSize)));
      """;

  @TempDir private Path data;

  @Test
  void everyPageOfTheReferenceIsFitForEverybody() throws Exception {
    try (InProcessServer server = InProcessServer.on(data);
        Window window = Window.open(server.port(), Window.LAPTOP)) {
      for (String path : pages()) {
        window.go(path);
        PageCheck.accessibleEverywhere(window);
      }
      for (String path : List.of("/marks/usa", "/marks/canada/hazard", "/regions")) {
        window.go(path + "?wall=on");
        PageCheck.accessible(window);
        Object smallest = ((JavascriptExecutor) window.driver()).executeScript(SMALLEST_WORDS);
        assertThat(((Number) smallest).doubleValue()).as(path).isGreaterThanOrEqualTo(24);
      }
    }
  }

  private static List<String> pages() {
    List<String> pages =
        new ArrayList<>(
            List.of(
                "/marks",
                "/marks/atlantis",
                "/regions",
                "/regions?time=night",
                "/lights",
                "/lights?a=Fl(2)+10s&b=VQ(9)+10s&pace=half",
                "/lights?a=Fl(2)+10x&b=Fl+4s"));
    for (Practice each : Practice.values()) {
      String path = "/marks/" + each.id();
      pages.addAll(List.of(path, path + "/port-hand", path + "/poster"));
    }
    pages.addAll(
        List.of(
            "/marks/usa?time=night",
            "/marks/canada?time=afar",
            "/marks/iala-a?torch=on",
            "/marks/iala-b/west-cardinal?time=night",
            "/marks/usa/dayboard-nb?time=night"));
    return pages;
  }
}
