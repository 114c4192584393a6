package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The light bench, for anybody who comes, without scripts. */
class LightPagesTest {
  @TempDir private static Path folder;
  private static OpenServer server;

  @BeforeAll
  static void start() throws BindException {
    server = OpenServer.on(folder);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void showsTheLightThatTheAddressNames() {
    Visitor anybody = server.visitor();
    Document page = anybody.get("/lights?a=Fl(2)+10s");
    assertThat(anybody.status()).isEqualTo(200);
    assertThat(page.title()).startsWith("Fl(2) W 10s");
    assertThat(page.select(".dark svg animate")).hasSize(1);
    assertThat(page.select(".told").text()).contains("group flashing", "10 s", "white");
    assertThat(page.expectFirst("input[name=a]").val()).isEqualTo("Fl(2) 10s");
  }

  @Test
  void comparesTwoLightsOnOneTimeScale() {
    Document page = server.visitor().get("/lights?a=Fl+4s&b=Fl+10s&pace=half");
    assertThat(page.select(".lights:first-of-type section h2").eachText())
        .contains("Fl W 4s", "Fl W 10s");
    assertThat(page.select(".strips figure > svg")).hasSize(2);
    assertThat(lastFigure(page, 0)).isEqualTo(lastFigure(page, 1));
    assertThat(page.select(".dark animate").eachAttr("dur")).containsExactly("8s", "20s");
    assertThat(page.select(".choices [aria-current]").text()).isEqualTo("Half speed");
  }

  private static String lastFigure(Document page, int strip) {
    return page.select(".strips figure > svg")
        .get(strip)
        .select("text:matches(^[0-9]+$)")
        .last()
        .text();
  }

  @Test
  void keepsWhatWasTypedAndSaysWhatIsWrongBesideIt() {
    Visitor anybody = server.visitor();
    Document page = anybody.get("/lights?a=Fl(2)+10x&b=Q");
    assertThat(anybody.status()).isEqualTo(422);
    Element field = page.expectFirst("input[name=a]");
    assertThat(field.val()).isEqualTo("Fl(2) 10x");
    assertThat(field.attr("aria-describedby")).contains("a-problem");
    assertThat(page.expectFirst("#a-problem").text()).contains("needs a unit");
    assertThat(page.select(".dark > svg")).as("the other light is shown all the same").hasSize(1);
  }

  @Test
  void holdsTheLightStillWhenAsked() {
    Document page = server.visitor().get("/lights?a=VQ&pace=still");
    assertThat(page.select(".still .dark")).hasSize(1);
    assertThat(page.select(".strips figure > svg")).hasSize(1);
  }

  @Test
  void leadsFromEachClassToItsExampleAndToTheComparison() {
    Visitor anybody = server.visitor();
    Document page = anybody.get("/lights?a=Q&pace=quarter&wall=on");
    assertThat(page.select("form.characters, .reference")).isEmpty();
    page = anybody.get("/lights?a=Q&pace=quarter");
    Element row = page.select(".classes li").get(6);
    assertThat(row.select("a").eachAttr("href"))
        .containsExactly(
            "/lights?a=Fl%283%29+W+12s&pace=quarter", "/lights?a=Q&b=Fl%283%29+W+12s&pace=quarter");
    assertThat(anybody.get(row.expectFirst("a").attr("href")).title()).startsWith("Fl(3) W 12s");
  }
}
