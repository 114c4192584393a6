package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.fixture.FreeItems;

/** Items without options on pages alone, without a script. */
class FreeAnswerPagesTest {
  @TempDir private static Path folder;
  private static OpenServer numbers;
  private static OpenServer assemblies;
  private static OpenServer passages;
  private static Visitor instructor;

  @BeforeAll
  static void open() throws BindException {
    numbers = OpenServer.on(folder.resolve("numbers"), FreeItems::number);
    assemblies = OpenServer.on(folder.resolve("assemblies"), FreeItems::assembly);
    passages = OpenServer.on(folder.resolve("passages"), FreeItems::passage);
  }

  @AfterAll
  static void close() {
    numbers.close();
    assemblies.close();
    passages.close();
  }

  /** A learner at the first item of a drill; the instructor is at the page of the class. */
  private static Visitor drilling(OpenServer server) {
    instructor = server.instructor();
    instructor.get("/classes");
    instructor.send("main form", "name", "Tuesday evening", "practice", "iala-a");
    String code = instructor.one(".code-shown").text();
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "length", "3", "concept", "lateral-side", "do", "assign");
    Visitor learner = server.visitor();
    learner.get("/join/" + code);
    learner.send("form[action=/join]", "nickname", "Mira");
    learner.get("/drills");
    learner.follow(".drills a");
    return learner;
  }

  @Test
  void asksForANumberWithItsUnitAndSaysWhatIsRight() {
    Visitor learner = drilling(numbers);
    Element field = learner.one("#number");
    assertThat(field.attr("inputmode")).isEqualTo("decimal");
    assertThat(learner.one("label[for=number]").text()).isEqualTo("Your answer in nautical miles");
    assertThat(learner.one(".typed").text()).isEqualTo("M");
    assertThat(learner.page().select("input[type=radio]")).isEmpty();
    assertThat(learner.text()).doesNotContain("19.4", "13.4");
    learner.send("form.answer", "number", "13,0 M");
    assertThat(learner.one("h1").text()).contains("Not this time");
    assertThat(learner.one(".answers").text())
        .isEqualTo("You answered 13 M It works out at 19.4 M, give or take 0.6 M");
    assertThat(learner.one(".assumed").text()).contains("region B");
    learner.follow(".next a");
    learner.send("form.answer", "number", "19");
    assertThat(learner.one("h1").text()).contains("Right");
    assertThat(learner.one(".answers").text()).contains("19 M", "19.4 M");
  }

  @Test
  void keepsWhatWasTypedAndSaysWhatToMendBesideIt() {
    Visitor learner = drilling(numbers);
    refused(learner, "<b>far</b>", "Type one number, such as 12.5 or 12,5");
    refused(learner, "19 km", "The answer is asked for in M: type the number alone");
    learner.send("form.answer", "number", "");
    assertThat(learner.one("#number-problem").text())
        .isEqualTo("Type a number, or tick “Not sure”");
    learner.send("form.answer", "number", "19", "option", "not-sure");
    assertThat(learner.one("#number-problem").text())
        .isEqualTo("Type a number or tick “Not sure”, not both");
    assertThat(learner.one("#number").val()).isEqualTo("19");
    learner.send("form.answer", "number", "", "option", "not-sure");
    assertThat(learner.one("h1").text()).isEqualTo("You were not sure");
  }

  private static void refused(Visitor learner, String typed, String problem) {
    String item = learner.one("input[name=item]").val();
    learner.send("form.answer", "number", typed);
    assertThat(learner.status()).isEqualTo(422);
    assertThat(learner.one("#number").val()).isEqualTo(typed);
    assertThat(learner.one("#number").attr("aria-describedby")).isEqualTo("number-problem");
    assertThat(learner.one("#number-problem").text()).isEqualTo(problem);
    assertThat(learner.one(".problems a").attr("href")).isEqualTo("#number");
    assertThat(learner.one("input[name=item]").val()).isEqualTo(item);
  }

  @Test
  void offersTheChoicesOfEachPartWithPictures() {
    Visitor learner = drilling(assemblies);
    assertThat(learner.page().select(".slot legend").eachText())
        .containsExactly("Body shape", "Colours", "Topmark", "Light");
    assertThat(learner.page().select(".picture")).as("the mark itself").isEmpty();
    assertThat(learner.page().select("[name=part-body]")).hasSize(3);
    assertThat(learner.page().select(".slot:first-of-type .small svg")).isNotEmpty();
    assertThat(learner.page().select("button")).hasSize(2).as("leave and answer");
    assertThat(learner.text()).doesNotContain("Fl_R", "conical/", "region-swapped");
  }

  @Test
  void saysWhichPartsWereRightAndShowsBothMarks() {
    Visitor learner = drilling(assemblies);
    learner.send("form.answer", parts(learner, "conical", "plain-red", "none", "Fl R 2.5s"));
    assertThat(learner.one("h1").text()).contains("Not this time");
    assertThat(learner.page().select(".parts div").eachText())
        .containsExactly(
            "Body shape ✕ conical – right would be: can",
            "Colours ✓ plain-red – right",
            "Topmark ✕ none – right would be: can",
            "Light ✓ Fl R 2.5s – right");
    assertThat(learner.page().select("figcaption").eachText())
        .containsExactly("The mark you put together", "The right mark");
    assertThat(learner.page().select("figure svg")).hasSize(2);
    assertThat(learner.one(".assumed").text()).contains("shapes");
    learner.follow(".next a");
    learner.send("form.answer", parts(learner, "can", "plain-red", "can", "Fl R 2.5s"));
    assertThat(learner.one("h1").text()).contains("Right");
    assertThat(learner.page().select("figure svg")).hasSize(1);
  }

  @Test
  void asksForThePartsThatAreMissingAndKeepsTheOthers() {
    Visitor learner = drilling(assemblies);
    String body = learner.one("[name=part-body]").val();
    learner.send("form.answer", "part-body", body);
    assertThat(learner.status()).isEqualTo(422);
    assertThat(learner.page().select(".problems a").eachAttr("href"))
        .containsExactly("#part-colours", "#part-topmark", "#part-light");
    assertThat(learner.page().select("#part-colours")).hasSize(1);
    assertThat(learner.one("input[name=part-body][checked]").val()).isEqualTo(body);
    assertThat(learner.one(".slot.refused .problem").text())
        .isEqualTo("Choose one under “Colours”, or “Not sure”");
    learner.send("form.answer", "option", "not-sure");
    assertThat(learner.one("h1").text()).isEqualTo("You were not sure");
  }

  @Test
  void asksForASideOfEachMarkOnAChartWithoutDepths() {
    Visitor learner = drilling(passages);
    assertThat(learner.page().select(".slot legend").eachText())
        .hasSizeBetween(3, 6)
        .allMatch(each -> each.matches("Mark [1-6](, “.+”)?"));
    for (Element slot : learner.page().select(".slot")) {
      assertThat(slot.select(".row").eachText()).startsWith("To port", "To starboard");
    }
    assertThat(learner.page().select(".charted svg")).hasSize(1);
    assertThat(learner.one(".charted svg").attr("aria-label")).startsWith("Chart without depths");
    assertThat(learner.text()).doesNotContain("leave-to", "region-swapped");
  }

  @Test
  void tellsWhichMarksWereWrongAndWhereTheKeelMetTheGround() {
    Visitor learner = drilling(passages);
    int marks = learner.page().select(".slot").size();
    learner.send("form.answer", sides(learner, 0));
    assertThat(learner.one("h1").text()).contains("Not this time");
    assertThat(learner.page().select(".parts div")).hasSize(marks);
    assertThat(learner.page().select(".parts div").eachText())
        .anyMatch(each -> each.matches("Mark .*✕ To port – right would be: To starboard.*"))
        .anyMatch(each -> each.matches("Mark .*✓ To port – right.*"));
    assertThat(learner.page().select("figure.chart svg")).hasSize(1);
    assertThat(learner.one("figcaption").text()).contains("safe track", "dashed");
    assertThat(learner.one(".sailed").text())
        .startsWith("The safe track has ")
        .containsPattern("she leaves mark [1-6] on the wrong side");
  }

  @Test
  void asksForTheSidesThatAreMissingAndKeepsTheOthers() {
    Visitor learner = drilling(passages);
    String first = learner.one("[name=part-0]").val();
    learner.send("form.answer", "part-0", first);
    assertThat(learner.status()).isEqualTo(422);
    assertThat(learner.page().select(".problems a").eachAttr("href"))
        .startsWith("#part-1", "#part-2")
        .doesNotContain("#part-0");
    assertThat(learner.one("input[name=part-0][checked]").val()).isEqualTo(first);
    assertThat(learner.one(".slot.refused .problem").text())
        .matches("Choose a side for “Mark 2.*”, or “Not sure”");
    learner.send("form.answer", "option", "not-sure");
    assertThat(learner.one("h1").text()).isEqualTo("You were not sure");
    assertThat(learner.one(".answers").text()).contains("1 to ", ", 2 to ");
    assertThat(learner.one("figcaption").text()).isEqualTo("The safe track");
  }

  @Test
  void instructorsSeeTheSidesThatAreRightAndThoseOfBeliefs() {
    drilling(passages);
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "concept", "passage", "do", "sample");
    assertThat(instructor.one(".specimen .keyed .key").text()).matches("1 to .*, 3 to .* right");
    assertThat(instructor.page().select(".specimen:first-of-type .keyed li")).hasSizeGreaterThan(1);
    assertThat(instructor.page().select(".specimen:first-of-type .specimen-picture svg"))
        .hasSize(1);
  }

  /** The same choice for every mark. */
  private static String[] sides(Visitor learner, int choice) {
    List<String> fields = new ArrayList<>();
    for (Element slot : learner.page().select(".slot")) {
      Element input = slot.select("input").get(choice);
      fields.addAll(List.of(input.attr("name"), input.val()));
    }
    return fields.toArray(String[]::new);
  }

  @Test
  void instructorsSeeTheKeyAndWhereBeliefsLead() {
    drilling(numbers);
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "concept", "lateral-side", "do", "sample");
    assertThat(instructor.page().select(".specimen")).hasSize(4);
    assertThat(instructor.one(".specimen .keyed .key").text())
        .isEqualTo("19.4 M, give or take 0.6 M right");
    assertThat(instructor.page().select(".specimen:first-of-type .keyed li")).hasSize(3);
    assertThat(instructor.one(".specimen:first-of-type .keyed li:last-child").text())
        .startsWith("12.2 M");
  }

  @Test
  void instructorsSeeTheMarkThatIsRight() {
    drilling(assemblies);
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "concept", "lateral-side", "do", "sample");
    assertThat(instructor.one(".specimen .keyed .key").text())
        .isEqualTo("can, plain-red, can, Fl R 2.5s right");
    assertThat(instructor.page().select(".specimen:first-of-type .specimen-picture svg"))
        .hasSize(1);
  }

  private static String[] parts(Visitor learner, String... wanted) {
    List<String> fields = new ArrayList<>();
    List<Element> slots = learner.page().select(".slot");
    for (int i = 0; i < wanted.length; i++) {
      for (Element row : slots.get(i).select(".row")) {
        if (row.text().equals(wanted[i])) {
          Element input = row.expectFirst("input");
          fields.addAll(List.of(input.attr("name"), input.val()));
        }
      }
    }
    return fields.toArray(String[]::new);
  }
}
