package withy.web.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.net.URLEncoder;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.core.item.ItemGenerator;
import withy.usecase.MovableClock;

/** Each figure of a review leads to as many answers as it says, and tells so on its own. */
class AnswersBehindTest {
  private static final MovableClock CLOCK = new MovableClock();

  @TempDir private static Path folder;
  private static OpenServer server;
  private static Visitor instructor;
  private static String classPage;
  private static String drillPage;

  @BeforeAll
  static void answer() throws BindException {
    server = OpenServer.on(folder, ItemGenerator::item, CLOCK);
    instructor = server.instructor();
    instructor.send("main form", "name", "Tuesday evening", "practice", "iala-a");
    classPage = instructor.path().replaceFirst("\\?.*", "");
    String code = instructor.one(".code-shown").text();
    instructor.follow("a[href$=compose]");
    instructor.send(
        "#compose", "form", "identify", "length", "9", "title", "Round one", "do", "assign");
    List<Visitor> learners = List.of(learner(code, "Mira"), learner(code, "Sven"));
    learners.forEach(each -> answer(each, "Round one", 9));
    learner(code, "Wren");
    CLOCK.pass(Duration.ofHours(7));
    instructor = server.instructor();
    instructor.get(classPage + "/compose");
    instructor.send(
        "#compose", "form", "identify", "title", "The test", "kind", "readiness", "do", "assign");
    drillPage = instructor.one(".assigned h3 a:contains(The test)").attr("href");
    learners.forEach(each -> answer(each, "The test", 2));
  }

  private static Visitor learner(String code, String nickname) {
    Visitor learner = server.visitor();
    learner.get("/join/" + code);
    learner.send("form[action=/join]", "nickname", nickname);
    return learner;
  }

  private static void answer(Visitor learner, String drill, int items) {
    learner.get("/drills");
    learner.follow(".drills a:contains(" + drill + ")");
    for (int i = 0; i < items; i++) {
      learner.answer();
      learner.follow(".next a");
    }
  }

  @AfterAll
  static void close() {
    server.close();
  }

  private static Document review() {
    return instructor.get(classPage + "/review");
  }

  private static int behind(Element link) {
    String count = instructor.get(link.attr("href")).expectFirst("h1").text();
    assertThat(instructor.status()).isEqualTo(200);
    String word = count.split(" ")[0];
    return word.equals("No") ? 0 : word.equals("One") ? 1 : Integer.parseInt(word);
  }

  private static int first(String text) {
    return Integer.parseInt(text.split("\\D")[0]);
  }

  @Test
  void leadsFromEachShareOfTheTableToItsAnswers() {
    Document review = review();
    assertThat(review.select(".matrix td .share").size()).isGreaterThan(3);
    for (Element cell : review.select(".matrix td:has(.share)")) {
      assertThat(behind(cell.expectFirst(".share"))).isEqualTo(first(cell.select(".times").text()));
    }
  }

  @Test
  void leadsFromEachMarkToAllAnswersAboutIt() {
    int all = 0;
    for (Element mark : review().select(".matrix th[scope=row] a")) {
      all += behind(mark);
    }
    assertThat(all).isEqualTo(22);
  }

  @Test
  void leadsFromEachGroupToTheAnswersOfItsLearners() {
    Document review = review();
    assertThat(review.select("#groups")).isNotEmpty();
    List<Element> links = review.select("section[aria-labelledby=groups] a");
    assertThat(links).isNotEmpty();
    for (Element each : links) {
      assertThat(behind(each)).isPositive();
      assertThat(instructor.one(".behind-about").text()).startsWith(each.text());
    }
  }

  @Test
  void leadsFromEachFigureOfALearnerToTheirAnswers() {
    review();
    Document page = instructor.follow(".talk-with a");
    assertThat(page.select(".people tbody tr")).isNotEmpty();
    for (Element row : page.select(".people tbody tr")) {
      List<Element> links = row.select("a");
      int answers = first(links.get(1).text().split("of ")[1]);
      assertThat(behind(links.get(0))).isEqualTo(answers);
      assertThat(behind(links.get(1))).isEqualTo(answers);
      assertThat(behind(links.get(2))).isOne();
    }
  }

  @Test
  void leadsFromWhoIsReadyToTheAnswersOfThatDrill() {
    for (Element each : review().select("section[aria-labelledby=ready] li")) {
      assertThat(behind(each.expectFirst("a"))).isEqualTo(2);
      assertThat(instructor.page().select(".behind-about span").eachText())
          .containsExactly(each.expectFirst("strong").text(), "The test");
    }
    List<String> held = review().select("section[aria-labelledby=ready] li:has(.note)").eachText();
    assertThat(held).isNotEmpty().allMatch(each -> each.contains(" right. Held back: "));
    Document drill = instructor.get(drillPage);
    assertThat(drill.select(".people tbody tr")).hasSize(3);
    for (Element row : drill.select(".people tbody tr")) {
      assertThat(behind(row.expectFirst("a"))).isEqualTo(first(row.expectFirst("a").text()));
    }
    assertThat(behind(drill.expectFirst(".spread a"))).isEqualTo(4);
  }

  @Test
  void leadsFromAChangeToTheAnswersOfTheSessionAndFromSilenceToThoseThatWereHeard() {
    Document review = review();
    List<Element> changes = review.select("section[aria-labelledby=session] a");
    assertThat(changes).isNotEmpty();
    for (Element each : changes) {
      String in = each.attr("href");
      int all = behind(review.expectFirst("a[href=" + in.replaceFirst("&.*", "") + "]"));
      int now = behind(each);
      String before = in.replace("since", "until");
      assertThat(now).isPositive().isLessThan(all);
      assertThat(behind(new Element("a").attr("href", before))).isEqualTo(all - now);
      assertThat(instructor.one(".behind-about").text()).contains("before ");
    }
    for (Element each : review.select(".hidden-by-silence a")) {
      assertThat(behind(each)).isPositive();
      assertThat(instructor.one(".behind-about").text()).isEqualTo(each.text());
    }
  }

  @Test
  void refusesADrillOfAnotherClassAndAMomentThatIsNone() {
    String list = classPage + "/responses";
    instructor.get(list + "?assignment=" + "0".repeat(32));
    assertThat(instructor.status()).isEqualTo(404);
    instructor.get(list + "?since=yesterday");
    assertThat(instructor.status()).isEqualTo(422);
  }

  /** No database holds the last year that the clock of a program can say. */
  @Test
  void refusesAMomentThatCannotBeKept() {
    for (Instant far : List.of(Instant.MIN, Instant.MAX)) {
      for (String field : List.of("since", "until", "before")) {
        String moment =
            URLEncoder.encode(far.toString(), UTF_8) + (field.equals("before") ? "_x" : "");
        instructor.get(classPage + "/responses?" + field + "=" + moment);
        assertThat(instructor.status()).as("%s %s", field, far).isEqualTo(422);
      }
    }
  }

  /** Read out alone, a link says what it is about: its name begins with what is seen. */
  @Test
  void saysOfEachLinkWhatItIsAbout() {
    Document review = review();
    List<Element> links = new ArrayList<>(review.select("a[href*=responses]"));
    links.addAll(instructor.follow(".talk-with a").select(".people a[href*=responses]"));
    links.removeIf(each -> each.is(".lead a, a[href$=csv]"));
    assertThat(links.size()).isGreaterThan(20);
    for (Element each : links) {
      assertThat(each.attr("aria-label")).startsWith(each.text());
      assertThat(each.attr("aria-label").length()).isGreaterThan(each.text().length());
    }
  }
}
