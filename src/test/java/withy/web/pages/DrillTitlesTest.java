package withy.web.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;

import com.fasterxml.jackson.databind.JsonNode;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.ClubServer;
import withy.web.Browser;

/** What pages call a drill that nobody gave a title. */
class DrillTitlesTest {
  @ParameterizedTest
  @CsvSource({
    "rehearsal, '', Rehearsal: The Skarrow",
    "rehearsal, 'Out and home', Out and home",
    "adaptive, '', Drill"
  })
  void callARehearsalAfterItsPassage(String kind, String given, String called) {
    try (ClubServer club = ClubServer.start()) {
      Browser instructor = club.instructor();
      JsonNode tuesday = ClubServer.schoolClass(instructor, "iala-a");
      String drill =
          "{'class':'%s','title':'%s','kind':'%s','composition':{'water':'home-water','length':9}}";
      String sent = drill.formatted(tuesday.get("id").textValue(), given, kind);
      JsonNode made = json(instructor.postJson("/api/assignments", quoted(sent)));
      String id = made.get("id").textValue();
      Browser learner = club.learner(tuesday.get("code").textValue(), "Tern");

      assertThat(page(instructor, "/assignments/" + id).expectFirst("h1").text()).isEqualTo(called);
      String school = "/classes/" + tuesday.get("id").textValue();
      assertThat(page(instructor, school).expectFirst(".assigned h3").text()).isEqualTo(called);
      assertThat(page(learner, "/drills").expectFirst(".drills .name").text()).isEqualTo(called);
      assertThat(page(learner, "/drills/" + id).title()).startsWith(called);
    }
  }

  private static Document page(Browser browser, String path) {
    return Jsoup.parse(browser.get(path).body());
  }
}
