package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The form in which a drill is composed: short for who wants any drill, with all of it at hand. */
class ComposeGroupsTest {
  private static final String WHERE = "details:has(#where-now)";
  private static final String HOW = "details:has(#how-now)";
  private static final String ASKED = "details:has(#asked-now)";

  @TempDir private static Path folder;
  private static OpenServer server;
  private static Visitor jo;
  private static String classPage;

  @BeforeAll
  static void start() throws BindException {
    server = OpenServer.on(folder);
    jo = server.instructor();
    jo.send("main form", "name", "Tuesday", "practice", "iala-a");
    classPage = jo.path().replaceFirst("\\?.*", "");
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @BeforeEach
  void begin() {
    jo.get(classPage + "/compose");
  }

  private static boolean isOpen(String part) {
    return jo.one(part).hasAttr("open");
  }

  private static void assertOnePrimaryButton() {
    assertThat(jo.page().select("main :is(button, .button):not(.second, .plain)").eachText())
        .containsExactly("Assign the drill");
  }

  @Test
  void beginsWithWhatEveryDrillNeedsAndClosesTheRest() {
    assertThat(jo.page().select("#compose > .group > legend").eachText())
        .containsExactly("The drill", "What it asks", "Where and when", "How it is done");
    assertThat(jo.page().select("#compose > .group:first-of-type [name]").eachAttr("name"))
        .containsExactly("length", "due", "title", "do", "do");
    assertThat(jo.page().select("#compose details[open]")).isEmpty();
    assertThat(jo.page().select("#compose details [name=concept]")).isEmpty();
    assertThat(jo.one("#asked-now").text()).isEqualTo("All forms of item");
    assertThat(jo.one("#where-now").text()).isEqualTo("Any water · Day and night · Any difficulty");
    assertThat(jo.one("#how-now").text()).isEqualTo("Follows each learner · Opens at once");
    assertOnePrimaryButton();
  }

  @Test
  void saysBesideTheOneButtonHowMuchEachLearnerGets() {
    assertThat(jo.one("fieldset:has(button[value=assign]) #count").text())
        .isEqualTo("12 items for each learner · from 21 concepts");
    jo.send("#compose", "concept", "safe-water", "length", "1", "do", "sample");
    assertThat(jo.one("#count").text()).isEqualTo("1 item for each learner · from 1 concept");
    jo.send("#compose", "concept", "safe-water", "kind", "readiness", "do", "sample");
    assertThat(jo.one("#count").text()).startsWith("At most 40 items for each learner");
    jo.send("#compose", "length", "many", "do", "sample");
    assertThat(jo.one("#count").text()).isEmpty();
    assertOnePrimaryButton();
  }

  @Test
  void opensAPartInWhichSomethingIsChosenAndSaysIt() {
    jo.send("#compose", "time", "night", "do", "sample");
    assertThat(jo.one("#where-now").text()).isEqualTo("Any water · Night · Any difficulty");
    assertThat(isOpen(WHERE)).isTrue();
    assertThat(isOpen(ASKED)).isFalse();
    assertThat(isOpen(HOW)).isFalse();
    jo.get(classPage + "/compose");
    jo.send("#compose", "form", "identify", "kind", "fixed", "do", "sample");
    assertThat(jo.one("#asked-now").text()).isEqualTo("Name the mark");
    assertThat(jo.one("#how-now").text()).isEqualTo("The same items for everybody · Opens at once");
    assertThat(isOpen(WHERE)).isFalse();
    assertThat(isOpen(ASKED)).isTrue();
    assertThat(isOpen(HOW)).isTrue();
  }

  @Test
  void opensAPartInWhichSomethingIsWrong() {
    jo.send("#compose", "opens", "soon", "do", "assign");
    assertThat(jo.page().select(".problems a").eachAttr("href")).containsExactly("#opens");
    assertThat(jo.one(HOW).select("#opens-problem")).isNotEmpty();
    assertThat(isOpen(HOW)).isTrue();
    jo.get(classPage + "/compose");
    jo.send("#compose", "kind", "rehearsal", "do", "assign");
    assertThat(jo.page().select(".problems a").eachAttr("href")).containsExactly("#water");
    assertThat(jo.one("#where-now").text()).startsWith("Any water");
    assertThat(isOpen(WHERE)).isTrue();
    assertThat(jo.one("#water").attr("aria-describedby")).isEqualTo("water-hint water-problem");
    assertThat(jo.one("#water").attr("aria-invalid")).isEqualTo("true");
    assertOnePrimaryButton();
  }

  @Test
  void saysWhatASampleAllowsOnlyOfAFormThatCanBeRead() {
    String note = "#sample h2:contains(A sample) + .note";
    jo.send("#compose", "length", "many", "do", "sample");
    assertThat(jo.one(note).text()).startsWith("A sample stands here once");
    jo.send(
        "#compose",
        "concept",
        "safe-water",
        "form",
        "cardinal-pass",
        "length",
        "5",
        "do",
        "sample");
    assertThat(jo.one(note).text()).startsWith("These choices allow no item");
  }

  /** A browser sends none twice; a set that was kept so could not be read again. */
  @Test
  void keepsOnceWhatIsSentTwice() {
    String twice = "safe-water";
    jo.send("#compose", "concept", twice, "concept", twice, "title", "Twice", "do", "keep");
    assertThat(jo.status()).isEqualTo(200);
    jo.get("/drill-sets");
    assertThat(jo.status()).isEqualTo(200);
    assertThat(jo.page().text()).contains("Twice");
  }

  @Test
  void refusesADayOfNoTimes() {
    jo.send("#compose", "due", "-999999999-01-01T00:00", "do", "assign");
    assertThat(jo.page().select(".problems a").eachAttr("href")).containsExactly("#due");
  }

  @Test
  void aFollowUpHasTheSameOneButton() {
    jo.get(classPage + "/follow-up?concept=cardinal-side");
    assertThat(jo.one("#count").text()).isEqualTo("12 items for each learner · from 1 concept");
    assertOnePrimaryButton();
  }

  @Test
  void aReadinessDrillTellsWhoHasBegunSinceAFewAnswersMayEndIt() {
    String code = jo.get(classPage).expectFirst(".code-shown").text();
    jo.follow("a[href$=compose]");
    jo.send("#compose", "title", "Ready?", "kind", "readiness", "do", "assign");
    Visitor ada = server.visitor();
    ada.get("/join/" + code);
    ada.send("form[action='/join']", "nickname", "Ada");
    ada.get("/drills");
    ada.follow(".drills a");
    ada.answer();
    Visitor bo = server.visitor();
    bo.get("/join/" + code);
    bo.send("form[action='/join']", "nickname", "Bo");

    jo.get(classPage);
    assertThat(jo.one(".assigned").text()).contains("1 of 2 learners have begun");
    assertThat(jo.page().select(".assigned td:first-of-type").eachText())
        .containsExactly("1 answered", "0 answered");
    jo.get(classPage + "/review");
    assertThat(jo.one("section:has(#ready)").text()).contains("No readiness drill begun yet: Bo.");
  }
}
