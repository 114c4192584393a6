package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a learner can do with pages alone, without a script. */
class LearnerPagesTest {
  private static final int LENGTH = 3;

  @TempDir private static Path folder;
  private static OpenServer server;
  private static Visitor instructor;
  private String code = "";

  @BeforeAll
  static void open() throws BindException {
    server = OpenServer.on(folder);
    instructor = server.instructor();
  }

  @AfterAll
  static void close() {
    server.close();
  }

  @BeforeEach
  void openClassWithDrill() {
    instructor.get("/classes");
    instructor.send("main form", "name", "Tuesday evening", "practice", "canada");
    code = instructor.one(".code-shown").text();
    instructor.follow("a[href$=compose]");
    instructor.send(
        "#compose",
        "length",
        "" + LENGTH,
        "title",
        "First round",
        "form",
        "side",
        "form",
        "identify",
        "do",
        "assign");
  }

  private Visitor learner(String nickname) {
    Visitor learner = server.visitor();
    learner.get("/join/" + code);
    learner.send("form[action=/join]", "nickname", nickname);
    return learner;
  }

  private Visitor drilling(String nickname) {
    Visitor learner = learner(nickname);
    learner.get("/drills");
    learner.follow(".drills a");
    return learner;
  }

  private static void answer(Visitor learner) {
    learner.answer();
  }

  @Test
  void joinsDrillsAndEndsWithWhereTheyStandInWords() {
    Visitor learner = learner("Mira");
    assertThat(learner.one("h1").text()).isEqualTo("Welcome, Mira");
    learner.follow(".next a.second");
    assertThat(learner.one(".drills .left").text()).isEqualTo("3 of 3 left");
    learner.follow(".drills a");
    for (int i = 1; i <= LENGTH; i++) {
      assertThat(learner.one(".place").text()).contains("item " + i + " of 3");
      answer(learner);
      assertThat(learner.one("h1").text()).containsAnyOf("Right", "Not this time");
      assertThat(learner.one(".rule").text()).isNotEmpty();
      learner.follow(".next a");
    }
    assertThat(learner.one("h1").text()).isEqualTo("That was the last item");
    assertThat(learner.one(".standing").text()).containsAnyOf("Settled", "Wavering", "Not yet");
    assertThat(learner.page().select("main").text()).doesNotContain("%");
  }

  @Test
  void showsTheSameItemUntilItIsAnswered() {
    Visitor learner = drilling("Mira");
    String item = learner.one("input[name=item]").val();
    learner.get(learner.path());
    assertThat(learner.one("input[name=item]").val()).isEqualTo(item);
  }

  @Test
  void storesAFormThatIsSentTwiceOnce() {
    Visitor learner = drilling("Mira");
    Element form = learner.one("form.answer");
    String first = learner.one(".options input").val();
    List<String> fields = Visitor.fields(form, List.of("option", first));
    String shown = learner.post(form.attr("action"), fields).expectFirst("h1").text();
    assertThat(learner.post(form.attr("action"), fields).expectFirst("h1").text()).isEqualTo(shown);
    learner.get("/drills");
    assertThat(learner.one(".drills .left").text()).isEqualTo("2 of 3 left");
  }

  @Test
  void showsTheFirstAnswerWhereAnotherIsSentLater() {
    Visitor learner = drilling("Mira");
    Element form = learner.one("form.answer");
    String other = learner.one(".options input").val();
    List<String> fields = new ArrayList<>(Visitor.fields(form, List.of("option", "not-sure")));
    learner.post(form.attr("action"), fields);
    fields.set(fields.indexOf("response") + 1, "00000000-0000-4000-8000-000000000001");
    fields.set(fields.indexOf("option") + 1, other);
    Document again = learner.post(form.attr("action"), fields);
    assertThat(again.expectFirst("h1").text()).isEqualTo("You were not sure");
  }

  @Test
  void countsNotSureAsAnAnswerWithoutABelief() {
    Visitor learner = drilling("Mira");
    learner.send("form.answer", "option", "not-sure");
    assertThat(learner.one("h1").text()).isEqualTo("You were not sure");
    assertThat(learner.page().select(".assumed")).isEmpty();
  }

  @Test
  void asksForAChoiceWhereNoneWasMade() {
    Visitor learner = drilling("Mira");
    String item = learner.one("input[name=item]").val();
    learner.send("form.answer");
    assertThat(learner.status()).isEqualTo(422);
    assertThat(learner.page().title()).startsWith("Error: ");
    assertThat(learner.one(".problems a").attr("href")).isEqualTo("#option");
    assertThat(learner.page().select("#option")).hasSize(1);
    assertThat(learner.one("input[name=item]").val()).isEqualTo(item);
  }

  @Test
  void keepsWhatWasTypedWhereTheFormIsRefused() {
    Visitor visitor = server.visitor();
    visitor.get("/");
    visitor.send("form[action=/join]", "code", "nonsense", "nickname", "<b>\"Mira' & co");
    assertThat(visitor.status()).isEqualTo(422);
    assertThat(visitor.page().title()).startsWith("Error: ");
    assertThat(visitor.one("#code").val()).isEqualTo("nonsense");
    assertThat(visitor.one("#nickname").val()).isEqualTo("<b>\"Mira' & co");
    assertThat(visitor.one("#code").attr("aria-invalid")).isEqualTo("true");
    assertThat(visitor.one("#code").attr("aria-describedby")).contains("code-problem");
    assertThat(visitor.page().select("main b")).isEmpty();
  }

  @Test
  void comesBackWithTheReturnCodeFromAnotherPhone() {
    Visitor learner = learner("Mira");
    String returnCode = learner.one(".code-shown").text();
    Visitor elsewhere = server.visitor();
    elsewhere.get("/");
    elsewhere.send("form[action=/come-back]", "returnCode", returnCode.toLowerCase());
    assertThat(elsewhere.path()).isEqualTo("/drills");
    assertThat(elsewhere.one(".who").text()).isEqualTo("Mira");
    assertThat(elsewhere.get("/welcome").text()).doesNotContain(returnCode);
  }

  @Test
  void refusesAFormWithoutTheTokenOfItsPage() {
    Visitor learner = drilling("Mira");
    Element form = learner.one("form.answer");
    form.expectFirst("input[name=token]").remove();
    learner.post(form.attr("action"), Visitor.fields(form, List.of("option", "not-sure")));
    assertThat(learner.status()).isEqualTo(403);
    learner.get("/drills");
    assertThat(learner.one(".drills .left").text()).isEqualTo("3 of 3 left");
  }

  @Test
  void showsNoDrillOfAnotherClassAndNoItemOfAnotherLearner() {
    Visitor learner = drilling("Mira");
    String drill = learner.path();
    String item = learner.one("input[name=item]").val();
    Visitor other = learner("Tom");
    assertThat(other.get(drill + "/items/" + item).title()).contains("No such item");
    assertThat(other.status()).isEqualTo(404);
    other.get("/drills/0123456789abcdef0123456789abcdef");
    assertThat(other.status()).isEqualTo(404);
  }

  @Test
  void tellsNothingOfTheKeyBeforeTheAnswer() {
    Visitor learner = drilling("Mira");
    for (int i = 0; i < LENGTH; i++) {
      String page = learner.text();
      assertThat(page).doesNotContain("leave-to-", "pass-north", "-cardinal", "-hand");
      answer(learner);
      learner.follow(".next a");
    }
  }

  /** Before the answer it might hint at it: that nothing is known of sides, say. */
  @Test
  void saysWhyAnItemWasAskedOnceItIsAnswered() {
    Visitor learner = drilling("Mira");
    for (int i = 0; i < LENGTH; i++) {
      assertThat(learner.page().select(".asked")).isEmpty();
      assertThat(learner.text()).doesNotContain("Asked because", "Asked to keep");
      answer(learner);
      assertThat(learner.one(".asked").text()).startsWith("Asked ").endsWith(".");
      learner.follow(".next a");
    }
    Visitor first = drilling("Tom");
    answer(first);
    assertThat(first.one(".asked").text()).contains("you had not been asked about", "before");
  }

  @Test
  void stopsTheLightByALinkAndLetsItFlashAgain() {
    Visitor learner = server.visitor();
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "concept", "cardinal-light", "time", "night", "do", "assign");
    learner.get("/join/" + code);
    learner.send("form[action=/join]", "nickname", "Mira");
    learner.get("/drills");
    learner.follow(".drills a");
    learner.follow(".light-switch a");
    assertThat(learner.page().select(".picture.still")).hasSize(1);
    learner.follow(".light-switch a");
    assertThat(learner.page().select(".picture.still")).isEmpty();
  }
}
