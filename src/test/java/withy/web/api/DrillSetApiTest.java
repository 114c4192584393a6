package withy.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import withy.ClubServer;
import withy.web.Browser;

/** Drill sets by scripts. */
class DrillSetApiTest {
  private static final String FILE =
      "{\n  \"title\": \"Ours\",\n  \"concepts\": [\"region\"],\n  \"length\": 3\n}\n";

  private static ClubServer club;
  private static Browser instructor;

  @BeforeAll
  static void start() {
    club = ClubServer.start();
    instructor = club.instructor();
  }

  @AfterAll
  static void stop() {
    club.close();
  }

  private static String kept() {
    HttpResponse<String> response = instructor.postJson("/api/drill-sets", FILE);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(201);
    return json(response).get("id").textValue();
  }

  private static HttpResponse<String> delete(Browser browser, String id) {
    return browser.send(
        "DELETE", "/api/drill-sets/" + id, "application/json", BodyPublishers.noBody());
  }

  @Test
  void keepsListsGivesBackAndDeletes() {
    String id = kept();
    assertThat(instructor.get("/api/drill-sets/" + id).body()).isEqualTo(FILE);
    JsonNode all = json(instructor.get("/api/drill-sets"));
    List<String> own = new ArrayList<>();
    all.forEach(
        each -> {
          if (each.get("own").booleanValue()) {
            own.add(each.get("id").textValue());
          }
        });
    assertThat(own).contains(id);
    assertThat(all.toString()).contains("first-evening");
    assertThat(delete(instructor, id).statusCode()).isEqualTo(204);
    assertThat(instructor.get("/api/drill-sets/" + id).statusCode()).isEqualTo(404);
    assertThat(delete(instructor, id).statusCode()).isEqualTo(404);
    assertThat(delete(instructor, "by-night").statusCode()).isEqualTo(404);
  }

  @Test
  void assignsAKeptSetByItsIdUnderItsTitle() {
    JsonNode tuesday = ClubServer.schoolClass(instructor, "iala-a");
    String json = "{'class':'%s','drillSet':'%s'}".formatted(tuesday.get("id").textValue(), kept());
    assertThat(instructor.postJson("/api/assignments", quoted(json)).statusCode()).isEqualTo(201);
    Browser learner = club.learner(tuesday.get("code").textValue(), "Tern");
    JsonNode drill = json(learner.get("/api/assignments")).get(0);
    assertThat(drill.get("title").textValue()).isEqualTo("Ours");
    assertThat(drill.get("length").intValue()).isEqualTo(3);
  }

  @Test
  void tellsWhatIsWrongWithAFileAndWhere() {
    String unfit = "{'title':' ','concepts':['region','regoin'],'length':0,'colour':1}";
    HttpResponse<String> response = instructor.postJson("/api/drill-sets", quoted(unfit));
    assertThat(response.statusCode()).isEqualTo(422);
    JsonNode problem = json(response);
    assertThat(problem.get("type").textValue()).isEqualTo("urn:problem:withy:unfit-drill-set");
    assertThat(problem.get("problems").findValuesAsText("place"))
        .containsExactlyInAnyOrder("colour", "title", "concepts[1]", "length");
    JsonNode broken = json(instructor.postJson("/api/drill-sets", "{\n \"title\": oops}"));
    assertThat(broken.get("problems").get(0).get("text").textValue())
        .startsWith("no JSON: line 2, column ");
  }

  @Test
  void anothersSetIsNotThere() {
    String id = kept();
    Browser other = club.otherInstructor();
    assertThat(other.get("/api/drill-sets/" + id).statusCode()).isEqualTo(404);
    assertThat(delete(other, id).statusCode()).isEqualTo(404);
    assertThat(other.get("/api/drill-sets").body()).doesNotContain(id);
    JsonNode wednesday = ClubServer.schoolClass(other, "iala-a");
    String json = "{'class':'%s','drillSet':'%s'}".formatted(wednesday.get("id").textValue(), id);
    HttpResponse<String> refused = other.postJson("/api/assignments", quoted(json));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(json(refused).get("field").textValue()).isEqualTo("drillSet");
  }
}
