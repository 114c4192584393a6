package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.BindException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an instructor can do with pages alone, without a script. */
class InstructorPagesTest {
  private static final int LARGEST_PAGE = 50 * 1024;

  @TempDir private static Path folder;
  private static OpenServer server;

  @BeforeAll
  static void open() throws BindException {
    server = OpenServer.on(folder);
    server.firstInstructor();
  }

  @AfterAll
  static void close() {
    server.close();
  }

  private static Visitor withClass() {
    Visitor instructor = server.instructor();
    instructor.send("main form", "name", "Tuesday evening", "practice", "iala-a");
    return instructor;
  }

  /** A class in which each of some learners has answered a drill, the first option each time. */
  private static Visitor withAnswers(int learners) {
    Visitor instructor = withClass();
    String code = instructor.one(".code-shown").text();
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "concept", "cardinal-side", "length", "4", "do", "assign");
    for (int i = 0; i < learners; i++) {
      Visitor learner = server.visitor();
      learner.get("/join/" + code);
      learner.send("form[action=/join]", "nickname", "Learner " + i);
      learner.get("/drills");
      learner.follow(".drills a");
      for (int k = 0; k < 4; k++) {
        learner.answer();
        learner.follow(".next a");
      }
    }
    return instructor;
  }

  @Test
  void plansACourseOfWhichARowTurnsIntoADrillInOnePress() {
    Visitor instructor = withClass();
    instructor.follow("a[href$=plan]");
    String page = instructor.path();
    assertThat(instructor.get(page).select("#sessions .assigned")).isEmpty();
    String practical =
        java.time.LocalDate.now(java.time.ZoneId.systemDefault()).plusDays(30).toString();
    Document plan = instructor.get(page + "?practical=" + practical + "&evenings=3&water=");
    assertThat(plan.select("#sessions .assigned").size()).isBetween(5, 10);
    assertThat(plan.select("#practical").val()).isEqualTo(practical);
    assertThat(plan.select("#sessions p").eachText())
        .filteredOn(t -> t.startsWith("Together"))
        .hasSize(3);
    instructor.send("#sessions form", "do", "assign");
    assertThat(instructor.one(".news").text()).contains("First meeting");
    assertThat(instructor.one(".assigned h3").text()).startsWith("First meeting");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "practical=soon&evenings=3",
        "practical=2001-01-01&evenings=3",
        "practical=2999-01-01&evenings=3"
      })
  void saysWhichPracticalCannotBePlannedFor(String asked) {
    Visitor instructor = withClass();
    Document refused = instructor.get(instructor.path().replaceAll("[?].*", "") + "/plan?" + asked);
    assertThat(refused.select("#practical-problem").text()).contains("Choose a day from tomorrow");
    assertThat(refused.select("#evenings").val()).isEqualTo("3");
  }

  @Test
  void makesAClassWithACodeALinkAndAQrCode() {
    Visitor instructor = withClass();
    String code = instructor.one(".code-shown").text();
    assertThat(code).hasSize(6);
    assertThat(instructor.one(".join-link a").text()).startsWith("http://").endsWith(code);
    assertThat(instructor.page().select(".qr svg[role=img]")).hasSize(1);
    assertThat(instructor.one(".empty").text()).contains("Compose the first one");
  }

  @Test
  void signsOutAndInAgain() {
    Visitor instructor = withClass();
    instructor.send("form.leave");
    assertThat(instructor.get("/classes").expectFirst("h1").text()).startsWith("Sign in");
    instructor.send("main form", "name", "jo harker", "password", "a withy in the mud");
    assertThat(instructor.path()).isEqualTo("/classes");
  }

  @Test
  void showsASampleWithKeysAndAnotherOneNextTime() {
    Visitor instructor = withClass();
    instructor.follow("a[href$=compose]");
    assertThat(instructor.page().select(".specimen")).isNotEmpty();
    assertThat(instructor.page().select(".specimen .key"))
        .hasSameSizeAs(instructor.page().select(".specimen"));
    instructor.send("#compose", "concept", "cardinal-side", "do", "sample");
    String first = instructor.one("#sample").text();
    assertThat(first).contains("Sides of cardinal marks: 12");
    assertThat(instructor.page().select("input[name=concept][checked]").eachAttr("value"))
        .containsExactly("cardinal-side");
    instructor.send("#compose", "do", "sample");
    assertThat(instructor.one("#sample").text()).isNotEqualTo(first);
  }

  @Test
  void assignsWithADueTimeAsAPersonSaysIt() {
    Visitor instructor = withClass();
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "title", "Round one", "due", "2026-03-14T18:00", "do", "assign");
    assertThat(instructor.one(".news").text()).contains("Round one");
    assertThat(instructor.one(".assigned").text()).contains("Due Saturday 14 March, 18:00");
  }

  @Test
  void keepsThePracticeAndTheDifficultyThatWereChosen() {
    Visitor instructor = withClass();
    instructor.follow("a[href$=compose]");
    instructor.send(
        "#compose",
        "concept",
        "lateral-side",
        "practice",
        "usa",
        "difficulty",
        "harder",
        "do",
        "sample");
    assertThat(instructor.page().select("#practice option[selected]").eachAttr("value"))
        .containsExactly("usa");
    assertThat(instructor.page().select("#difficulty option[selected]").eachAttr("value"))
        .containsExactly("harder");
    assertThat(instructor.page().select(".specimen")).isNotEmpty();
    instructor.send(
        "#compose", "concept", "cardinal-light", "difficulty", "easier", "do", "assign");
    assertThat(instructor.status()).isEqualTo(422);
    assertThat(instructor.page().select(".problems a").eachAttr("href"))
        .containsExactly("#concept");
  }

  @Test
  void keepsWhatWasTypedWhereADrillIsRefused() {
    Visitor instructor = withClass();
    instructor.follow("a[href$=compose]");
    instructor.send(
        "#compose",
        "concept",
        "safe-water",
        "time",
        "day",
        "length",
        "201",
        "title",
        "Round <one>",
        "due",
        "soon",
        "do",
        "assign");
    assertThat(instructor.status()).isEqualTo(422);
    assertThat(instructor.page().select(".problems a").eachAttr("href"))
        .containsExactly("#length", "#due");
    assertThat(instructor.one("#length").val()).isEqualTo("201");
    assertThat(instructor.one("#title").val()).isEqualTo("Round <one>");
    assertThat(instructor.page().select("input[checked]").eachAttr("value"))
        .containsExactly("safe-water", "day", "adaptive");
  }

  @Test
  void composesTheFollowUpOfAWeakSpotInOnePress() {
    Visitor instructor = withAnswers(1);
    instructor.follow("a[href$=review]");
    instructor.follow("a[href*=follow-up]");
    assertThat(instructor.page().select("input[name=concept][checked]").eachAttr("value"))
        .containsExactly("cardinal-side");
    assertThat(instructor.one("#title").val()).isEqualTo("Follow-up: Sides of cardinal marks");
    instructor.send("#compose", "do", "assign");
    assertThat(instructor.one(".news").text()).contains("Follow-up: Sides of cardinal marks");
  }

  @Test
  void reviewsWithTheNumbersOfTheCallToTheLastDigit() throws IOException {
    Visitor instructor = withAnswers(3);
    Document page = instructor.follow("a[href$=review]");
    String csv = page.expectFirst("a[href$=csv]").attr("href");
    instructor.get(csv.replace("responses.csv", "review"));
    JsonNode review = new ObjectMapper().readTree(instructor.text());
    JsonNode concept = review.get("concepts").get(0);
    assertThat(page.select(".concept-row")).hasSize(review.get("concepts").size());
    assertThat(page.select(".figures data").eachAttr("value").subList(0, 5))
        .containsExactly(
            concept.get("errorRate").asText(),
            concept.get("lower").asText(),
            concept.get("upper").asText(),
            concept.get("aboveTolerance").asText(),
            concept.get("effectiveAnswers").asText());
    assertThat(page.expectFirst(".concept-row .base").text())
        .isEqualTo("3 of 3 learners, 12 answers");
    assertThat(page.select(".people data").eachAttr("value"))
        .allMatch(shown -> review.get("learners").findValuesAsText("knows").contains(shown));
    assertThat(instructor.get(csv).text()).startsWith("learner,assignment,item");
  }

  /** Each item shows one mark: the counts of what was known and of what was not come to all. */
  @Test
  void laysOutWhichMarkIsTakenForWhich() {
    Visitor instructor = withClass();
    String code = instructor.one(".code-shown").text();
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "form", "identify", "length", "9", "do", "assign");
    Visitor learner = server.visitor();
    learner.get("/join/" + code);
    learner.send("form[action=/join]", "nickname", "Mira");
    learner.get("/drills");
    learner.follow(".drills a");
    for (int i = 0; i < 9; i++) {
      learner.answer();
      learner.follow(".next a");
    }
    instructor.follow("a[href$=review]");
    Document page = instructor.page();
    int counted =
        page.select(".matrix :is(.right, .taken, .listed) .times").eachText().stream()
            .mapToInt(each -> Integer.parseInt(each.split(" of ")[0]))
            .sum();
    assertThat(counted).isEqualTo(9);
    int columns = page.select(".matrix thead abbr").size();
    for (Element row : page.select(".matrix tbody tr")) {
      assertThat(row.select("td")).hasSize(columns);
    }
    assertThat(page.select(".matrix thead abbr").eachAttr("title")).doesNotHaveDuplicates();
  }

  @Test
  void saysWhatToTeachNextAndAssignsItInOnePress() {
    Visitor instructor = withAnswers(3);
    instructor.follow("a[href$=review]");
    String review = instructor.path();
    assertThat(instructor.page().select(".figures dt").eachText())
        .contains("Expected not to know it now", "Wrong at the start");
    instructor.follow(".talk-with a");
    assertThat(instructor.one("h1").text()).isNotEmpty();
    assertThat(instructor.page().select(".people tbody tr")).isNotEmpty();
    assertThat(instructor.one(".next-asked p").text())
        .startsWith("“Sides of cardinal marks” would come first in a drill on all that Learner")
        .contains(" 4 answers ");
    instructor.send(".people form", "to", "learner");
    assertThat(instructor.one(".news").text()).contains("Assigned");
    assertThat(instructor.page().select(".assigned")).hasSize(2);
    assertThat(instructor.get(review).select("#groups")).isNotEmpty();
  }

  @Test
  void saysWhoHasDoneADrillAndWhoWasNotHeardFrom() {
    Visitor instructor = withAnswers(1);
    String classPage = instructor.path().replaceFirst("\\?.*", "");
    String code = instructor.one(".code-shown").text();
    Visitor silent = server.visitor();
    silent.get("/join/" + code);
    silent.send("form[action=/join]", "nickname", "Wren");
    instructor.get(classPage);
    assertThat(instructor.one(".assigned").text()).contains("1 of 2 learners are done");
    assertThat(instructor.page().select(".assigned tbody tr").eachText())
        .anyMatch(row -> row.startsWith("Learner 0 4 of 4"))
        .anyMatch(row -> row.startsWith("Wren 0 of 4"));
    assertThat(instructor.follow("a[href$=review]").text()).contains("Not heard from yet: Wren.");
  }

  @Test
  void refusesAnotherRoleAndAnUnknownClass() {
    Visitor instructor = withClass();
    String code = instructor.one(".code-shown").text();
    String classPage = instructor.path().replaceFirst("\\?.*", "");
    Visitor learner = server.visitor();
    learner.get("/join/" + code);
    learner.send("form[action=/join]", "nickname", "Mira");
    assertThat(learner.get(classPage).expectFirst("h1").text()).isNotEqualTo("Tuesday evening");
    assertThat(learner.status()).isEqualTo(403);
    assertThat(server.visitor().get(classPage).expectFirst("h1").text()).startsWith("Sign in");
    instructor.get("/classes/0123456789abcdef");
    assertThat(instructor.status()).isEqualTo(404);
    instructor.get("/nowhere");
    assertThat(instructor.status()).isEqualTo(404);
    assertThat(instructor.page().select("main a[href=/]")).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "${7*7} [[7*7]] #{page.item.answer}",
        "</title><b>bold</b>",
        "&lt;b&gt; &amp; {0} \\u003c",
        "javascript:alert(1)"
      })
  void writesNamesAsTextWhateverTheyHold(String name) {
    Visitor instructor = server.instructor();
    instructor.send("main form", "name", name, "practice", "usa");
    assertThat(instructor.one("h1").text()).isEqualTo(name);
    assertThat(instructor.page().title()).isEqualTo(name + " – Withy");
    instructor.follow("a[href$=compose]");
    assertThat(instructor.one(".place").text()).isEqualTo(name);
    instructor.send("#compose", "title", name, "do", "assign");
    assertThat(instructor.one(".assigned h3").text()).isEqualTo(name);
    instructor.get("/classes");
    assertThat(instructor.page().select(".drills .name").eachText()).contains(name);
    for (Element each : instructor.page().getAllElements()) {
      assertThat(each.attributes().asList()).noneMatch(a -> a.getKey().startsWith("on"));
    }
    assertThat(instructor.page().select("main img, main script, main b")).isEmpty();
  }

  @Test
  void keepsEveryPageUnderFiftyKilobytesCompressed() throws IOException {
    Visitor instructor = withAnswers(2);
    String classPage = instructor.path().replaceFirst("\\?.*", "");
    for (String each : List.of("", "/compose", "/review")) {
      instructor.get(classPage + each);
      assertThat(compressed(instructor.text())).as(each).isLessThan(LARGEST_PAGE);
    }
  }

  private static int compressed(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.size();
  }
}
