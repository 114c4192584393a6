package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GateTest {
  private static Server server;
  private static Browser nobody;
  private static Browser learner;
  private static Browser instructor;

  @BeforeAll
  static void start() throws BindException {
    server = ProbeServer.start();
    nobody = new Browser(server.port());
    learner = nobody.withCookie("of-learner");
    instructor = nobody.withCookie("of-instructor");
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  @ParameterizedTest
  @CsvSource({
    "/api/open, 200, 200, 200",
    "/api/learner, 401, 200, 403",
    "/api/instructor, 401, 403, 200",
    "/page, 200, 200, 200",
    "/learner, 303, 200, 403",
    "/instructor, 303, 403, 200",
  })
  void letsOnlyTheRightRolePass(String path, int forNobody, int forLearner, int forInstructor) {
    assertThat(nobody.get(path).statusCode()).isEqualTo(forNobody);
    assertThat(learner.get(path).statusCode()).isEqualTo(forLearner);
    assertThat(instructor.get(path).statusCode()).isEqualTo(forInstructor);
  }

  @Test
  void sendsWhoIsNotSignedInToTheEntryPage() {
    assertThat(nobody.get("/learner").headers().firstValue("Location")).hasValue("/");
    assertThat(nobody.get("/instructor").headers().firstValue("Location")).hasValue("/sign-in");
    assertThat(nobody.withCookie("long-ended").get("/api/learner").statusCode()).isEqualTo(401);
  }

  @ParameterizedTest
  @CsvSource({
    "right header, learner-token, 200",
    "header of another, instructor-token, 403",
    "header cut short, learner-toke, 403",
    "empty header, '', 403",
  })
  void asksAnUnsafeCallForTheTokenOfItsSession(String what, String token, int status) {
    HttpResponse<String> response =
        learner.with("X-Request-Token", token).postJson("/api/learner", "{}");
    assertThat(response.statusCode()).as(what).isEqualTo(status);
  }

  @Test
  void refusesAnUnsafeCallWithoutToken() {
    HttpResponse<String> response = learner.postJson("/api/learner", "{}");
    assertThat(response.statusCode()).isEqualTo(403);
    assertThat(response.body()).contains("urn:problem:withy:no-token");
    assertThat(learner.call("DELETE", "/api/learner").statusCode()).isEqualTo(403);
    assertThat(learner.postJson("/api/open", "{}").statusCode()).isEqualTo(403);
    assertThat(nobody.postJson("/api/open", "{}").statusCode()).isEqualTo(200);
  }

  @Test
  void takesTheTokenOfAFormFromItsHiddenField() {
    assertThat(learner.postForm("/learner", "token=learner-token").statusCode()).isEqualTo(303);
    assertThat(learner.postForm("/learner", "token=other").statusCode()).isEqualTo(403);
    assertThat(learner.postForm("/learner", "").statusCode()).isEqualTo(403);
    assertThat(learner.postForm("/api/learner", "token=learner-token").statusCode()).isEqualTo(403);
  }

  @ParameterizedTest
  @CsvSource({
    "http://127.0.0.1:{port}, 200",
    "HTTP://127.0.0.1:{port}, 200",
    "http://127.0.0.1:1, 403",
    "http://elsewhere.example, 403",
    "http://elsewhere.example:{port}, 403",
    "http://127.0.0.1:{port}.elsewhere.example, 403",
    "null, 403",
    "nonsense of a header, 403",
  })
  void refusesWhatAPageOfAnotherServerSends(String origin, int status) {
    String sent = origin.replace("{port}", Integer.toString(server.port()));
    assertThat(nobody.with("Origin", sent).postJson("/api/open", "{}").statusCode())
        .isEqualTo(status);
    assertThat(nobody.with("Origin", sent).get("/api/open").statusCode()).isEqualTo(200);
  }
}
