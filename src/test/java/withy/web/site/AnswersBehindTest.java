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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each figure of a review leads to as many answers as it says, and tells so on its own. */
class AnswersBehindTest {
  @TempDir private static Path folder;
  private static OpenServer server;
  private static Visitor instructor;
  private static String classPage;

  @BeforeAll
  static void answer() throws BindException {
    server = OpenServer.on(folder);
    instructor = server.instructor();
    instructor.send("main form", "name", "Tuesday evening", "practice", "iala-a");
    classPage = instructor.path().replaceFirst("\\?.*", "");
    String code = instructor.one(".code-shown").text();
    instructor.follow("a[href$=compose]");
    instructor.send("#compose", "form", "identify", "length", "9", "do", "assign");
    for (String nickname : List.of("Mira", "Sven")) {
      Visitor learner = server.visitor();
      learner.get("/join/" + code);
      learner.send("form[action=/join]", "nickname", nickname);
      learner.get("/drills");
      learner.follow(".drills a");
      for (int i = 0; i < 9; i++) {
        learner.answer();
        learner.follow(".next a");
      }
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
    return count.startsWith("One") ? 1 : Integer.parseInt(count.split(" ")[0]);
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
    assertThat(all).isEqualTo(18);
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
