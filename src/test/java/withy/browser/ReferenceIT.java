package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.chromium.HasCdp;
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

  /** A4 and Letter, upright and lying, less 12 mm of margin, in CSS pixels. */
  private static final int[] PAPERS = {703, 1032, 725, 965};

  private static final String CUT_OFF =
      """
      const wide = document.documentElement.clientWidth + 1;
      return [...document.querySelectorAll('.sheet .cards li')].filter(each => {
        const box = each.getBoundingClientRect();
        const words = each.querySelector('.name');
        return box.width < 100 || box.right > wide || words.scrollWidth > box.width + 1;
      }).map(each => each.textContent);
      """;

  @Test
  void postersLoseNothingOnAnyPaper() throws Exception {
    try (InProcessServer server = InProcessServer.on(data);
        Window window = Window.open(server.port(), Window.LAPTOP)) {
      if (!(window.driver() instanceof HasCdp chromium)) {
        return; // no other browser can be told to lay out for paper
      }
      chromium.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
      JavascriptExecutor script = (JavascriptExecutor) window.driver();
      for (Practice practice : Practice.values()) {
        for (int paper : PAPERS) {
          window.resize(paper);
          window.go("/marks/" + practice.id() + "/poster");
          assertThat((List<?>) script.executeScript(CUT_OFF)).as("on " + paper).isEmpty();
          assertThat(window.see(".sheet-foot").getCssValue("display"))
              .as("a foot that comes again on every sheet")
              .isEqualTo("table-footer-group");
        }
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
