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

/** The page of a kind of question, from the review to the answers behind it. */
class KindPagesTest {
  private static final String KIND = "/kinds/cardinal-pass/cardinal-side";

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

  /** The review of a class in which each of some learners answered two items on two concepts. */
  private static Visitor review(int learners) {
    Visitor instructor = server.instructor();
    instructor.send("main form", "name", "Tuesday evening", "practice", "iala-a");
    String code = instructor.one(".code-shown").text();
    String home = instructor.path().replaceAll("[?].*", "");
    assign(instructor, home, "cardinal-side", "cardinal-pass");
    assign(instructor, home, "lateral-side", "side");
    for (int i = 0; i < learners; i++) {
      Visitor learner = server.visitor();
      learner.get("/join/" + code);
      learner.send("form[action=/join]", "nickname", "Learner " + i);
      for (String drill : learner.get("/drills").select(".drills a").eachAttr("href")) {
        learner.get(drill);
        learner.answer();
      }
    }
    instructor.get(home + "/review");
    return instructor;
  }

  private static void assign(Visitor instructor, String home, String concept, String form) {
    instructor.get(home + "/compose");
    instructor.send("#compose", "concept", concept, "form", form, "length", "1", "do", "assign");
  }

  @Test
  void leadsFromAReviewToTheQuestionAndFromEachFigureToItsAnswers() {
    Visitor instructor = review(3);
    Document kind = instructor.follow(".by-kind a[href$=" + KIND + "]");
    assertThat(kind.expectFirst("h1").text()).isEqualTo("Pass a cardinal mark");
    assertThat(kind.text()).contains("3 answers of 3 learners", "below 30 learners");
    assertThat(kind.select(".figures dt").eachText())
        .contains("Share right", "Lies within", "Half take at most")
        .doesNotContain("Discrimination");
    assertThat(kind.select(".figures .note").eachText()).allMatch(each -> each.startsWith("–"));
    assertThat(kind.select("table.kinds thead th")).hasSize(3);
    assertThat(kind.select(".specimen")).hasSizeBetween(1, 3);
    for (Element row : kind.select("table.kinds tbody tr")) {
      String count = row.expectFirst("a").text().replaceAll(" of .*", "");
      Document behind = instructor.get(row.expectFirst("a").attr("href"));
      assertThat(behind.select("table.responses tbody"))
          .as(row.text())
          .hasSize(Integer.parseInt(count));
    }
    instructor.get(kind.expectFirst(".specimens a").attr("href"));
    assertThat(instructor.follow(".place a[href*=kinds]").expectFirst("h1").text())
        .isEqualTo("Pass a cardinal mark");
  }

  @Test
  void judgesTheQuestionAndItsOptionsFromThirtyLearnersOn() {
    Document kind = review(30).follow(".by-kind a[href$=" + KIND + "]");
    assertThat(kind.text()).contains("30 answers of 30 learners").doesNotContain("below 30");
    assertThat(kind.select(".figures dt").eachText()).contains("Discrimination");
    assertThat(kind.select("table.kinds thead th")).hasSize(4);
    assertThat(kind.select("table.kinds tbody td:last-child").text())
        .containsAnyOf("works: chosen", "does no work", "doubtful:");
  }

  @Test
  void saysWhatIsWrongWithAnAddress() {
    Visitor instructor = review(1);
    String of = instructor.path().replace("/review", "/kinds/");
    assertThat(instructor.get(of + "riddle/lateral-side").text()).contains("The field form");
    assertThat(instructor.status()).isEqualTo(422);
    assertThat(instructor.get(of + "side/riddles").text()).contains("The field concept");
    Document empty = instructor.get(of + "light/light-range");
    assertThat(instructor.status()).isEqualTo(200);
    assertThat(empty.expectFirst(".empty").text()).contains("Nobody in this class has answered");
    assertThat(empty.select("table, .figures")).isEmpty();
    instructor.get("/classes/none/kinds/side/lateral-side");
    assertThat(instructor.status()).isEqualTo(404);
  }
}
