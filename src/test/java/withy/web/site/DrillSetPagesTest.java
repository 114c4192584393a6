package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drill sets as an instructor keeps and uses them. */
class DrillSetPagesTest {
  @TempDir private Path folder;
  private OpenServer server;
  private Visitor jo;

  @BeforeEach
  void start() throws BindException {
    server = OpenServer.on(folder);
    jo = server.instructor();
    jo.send("main form", "name", "Tuesday", "practice", "iala-a");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private void keep(String title) {
    jo.get(jo.path().replaceFirst("\\?.*", "") + "/compose");
    jo.send(
        "#compose",
        "concept",
        "lateral-light",
        "length",
        "7",
        "time",
        "night",
        "title",
        title,
        "do",
        "keep");
  }

  @Test
  void keepsWhatIsComposedAndAssignsItInOnePress() {
    keep("Regions at night");
    assertThat(jo.status()).isEqualTo(200);
    assertThat(jo.one("h1").text()).isEqualTo("Regions at night");
    assertThat(jo.one(".facts-list").text())
        .contains("Lights of lateral marks", "7 items", "Night");
    jo.send(".assigned form");
    assertThat(jo.path()).startsWith("/classes/").contains("assigned=");
    assertThat(jo.one(".assigned h3").text()).isEqualTo("Regions at night");
  }

  @Test
  void aKeptSetIsWhatACompositionBeginsWith() {
    keep("Regions at night");
    jo.follow(".assigned a");
    assertThat(jo.one("#title").val()).isEqualTo("Regions at night");
    assertThat(jo.one("#length").val()).isEqualTo("7");
    assertThat(jo.page().select("input[name=concept][checked]").eachAttr("value"))
        .containsExactly("lateral-light");
    assertThat(jo.page().select("input[name=time][checked]").val()).isEqualTo("night");
  }

  @Test
  void withoutATitleItIsNamedByItsConcepts() {
    keep("");
    assertThat(jo.one("h1").text()).containsIgnoringCase("lights of lateral marks");
  }

  @Test
  void isRenamedCopiedAndDeleted() {
    keep("One");
    jo.send("form[action$=title]", "title", "x".repeat(61));
    assertThat(jo.status()).isEqualTo(422);
    assertThat(jo.one("#title").val()).hasSize(61);
    jo.send("form[action$=title]", "title", "Two");
    assertThat(jo.one("h1").text()).isEqualTo("Two");
    String one = jo.path().replaceFirst("\\?.*", "");
    jo.post(
        one + "/copy", Visitor.fields(jo.one("form[action$=title]"), List.of("title", "Three")));
    assertThat(jo.one("h1").text()).isEqualTo("Three");
    jo.send("form[action$=delete]");
    assertThat(jo.path()).startsWith("/drill-sets?deleted");
    assertThat(jo.page().select(".name").eachText()).contains("Two").doesNotContain("Three");
  }

  @Test
  void aFileThatIsUnfitIsKeptWithItsProblems() {
    jo.get("/drill-sets");
    jo.send("main form", "text", "{\"title\": \"In\", \"length\": 500}");
    assertThat(jo.status()).isEqualTo(422);
    assertThat(jo.one(".in-file").text()).contains("length", "from 1 to 200");
    assertThat(jo.one("textarea").wholeText()).contains("500");
    jo.send("main form", "text", "{\"title\": \"In\", \"length\": 50}");
    assertThat(jo.one("h1").text()).isEqualTo("In");
  }

  @Test
  void oneOfTheProgramIsShownWithAWayToCopyIt() {
    jo.get("/drill-sets/the-skarrow");
    assertThat(jo.one(".facts-list").text()).contains("The Skarrow");
    assertThat(jo.page().select("form[action$=delete]")).isEmpty();
    jo.send("form[action$=copy]");
    assertThat(jo.one(".facts-list").text()).contains("The Skarrow");
    assertThat(jo.page().select("form[action$=delete]")).isNotEmpty();
  }
}
