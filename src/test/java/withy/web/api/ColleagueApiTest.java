package withy.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import withy.ClubServer;
import withy.web.Browser;

/** What instructors of one school do with each other, by scripts. */
class ColleagueApiTest {
  private static final String SET = "{'title':'Ours','concepts':['region'],'length':3}";

  private static ClubServer club;
  private static Browser marlo;
  private static Browser quill;

  @BeforeAll
  static void start() {
    club = ClubServer.start();
    marlo = club.instructor();
    quill = club.otherInstructor();
  }

  @AfterAll
  static void stop() {
    club.close();
  }

  private static HttpResponse<String> send(Browser by, String method, String path, String body) {
    return by.send(method, path, "application/json", BodyPublishers.ofString(quoted(body)));
  }

  private static String colleague() {
    JsonNode all = json(marlo.get("/api/colleagues"));
    assertThat(all).hasSize(1);
    assertThat(all.get(0).get("name").textValue()).isEqualTo("Quill");
    return all.get(0).get("id").textValue();
  }

  @Test
  void handsAClassOverWithAllThatWasDrilledInIt() {
    String id = ClubServer.schoolClass(marlo, "iala-a").get("id").textValue();
    String path = "/api/classes/" + id + "/hand-over";
    String body = "{'colleague':'%s'}".formatted(colleague());
    assertThat(send(quill, "POST", path, body).statusCode()).isEqualTo(404);
    assertThat(send(marlo, "POST", path, "{'colleague':'nobody'}").statusCode()).isEqualTo(404);
    HttpResponse<String> more = send(marlo, "POST", path, "{'colleague':'x','why':'y'}");
    assertThat(more.statusCode()).isEqualTo(422);
    assertThat(json(more).get("field").textValue()).isEqualTo("why");
    assertThat(marlo.get("/api/classes").body()).contains(id);

    assertThat(send(marlo, "POST", path, body).statusCode()).isEqualTo(204);
    assertThat(marlo.get("/api/classes").body()).doesNotContain(id);
    assertThat(quill.get("/api/classes").body()).contains(id);
    assertThat(send(marlo, "POST", path, body).statusCode()).isEqualTo(404);
  }

  @Test
  void sharesADrillSetAndWithdrawsIt() {
    String id = json(marlo.postJson("/api/drill-sets", quoted(SET))).get("id").textValue();
    String path = "/api/drill-sets/" + id;
    assertThat(send(quill, "PUT", path + "/shared", "{'shared':true}").statusCode()).isEqualTo(404);
    assertThat(send(marlo, "PUT", path + "/shared", "{'shared':'yes'}").statusCode())
        .isEqualTo(422);
    assertThat(quill.get(path).statusCode()).isEqualTo(404);

    assertThat(send(marlo, "PUT", path + "/shared", "{'shared':true}").statusCode()).isEqualTo(204);
    assertThat(quill.get(path).statusCode()).isEqualTo(200);
    assertThat(json(quill.get("/api/drill-sets")).get(0).get("by").textValue()).isEqualTo("Marlo");
    String title = "{'title':'Mine'}";
    assertThat(send(quill, "PUT", path + "/title", title).statusCode()).isEqualTo(404);
    HttpResponse<String> copy = send(quill, "POST", path + "/copy", title);
    assertThat(copy.statusCode()).isEqualTo(201);

    assertThat(send(marlo, "PUT", path + "/shared", "{'shared':false}").statusCode())
        .isEqualTo(204);
    assertThat(quill.get(path).statusCode()).isEqualTo(404);
    String own = "/api/drill-sets/" + json(copy).get("id").textValue();
    assertThat(json(quill.get(own)).get("title").textValue()).isEqualTo("Mine");
    assertThat(send(quill, "PUT", own + "/title", "{'title':'Still mine'}").statusCode())
        .isEqualTo(204);
    assertThat(json(quill.get(own)).get("title").textValue()).isEqualTo("Still mine");
  }
}
