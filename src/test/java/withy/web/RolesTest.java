package withy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.response;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import withy.ClubServer;

/** Every row of the route table, called by everybody. */
class RolesTest {
  private static ClubServer club;
  private static final Map<String, Browser> CALLERS = new LinkedHashMap<>();
  private static JsonNode first;
  private static String drill;
  private static String answered;

  @BeforeAll
  static void people() {
    club = ClubServer.start();
    Browser instructor = club.instructor();
    Browser other = club.otherInstructor();
    first = ClubServer.schoolClass(instructor, "iala-a");
    JsonNode second = ClubServer.schoolClass(other, "iala-b");
    drill = ClubServer.assignment(instructor, first.get("id").textValue(), 50);
    Browser learner = club.learner(first.get("code").textValue(), "Tern");
    JsonNode item = json(learner.get("/api/assignments/" + drill + "/next"));
    answered = item.get("item").textValue();
    learner.postJson("/api/responses", response(answered, null));
    CALLERS.put("nobody", club.nobody());
    CALLERS.put("learner of class 1", learner);
    CALLERS.put("learner of class 2", club.learner(second.get("code").textValue(), "Knot"));
    CALLERS.put("instructor of class 1", instructor);
    CALLERS.put("instructor of class 2", other);
  }

  @AfterAll
  static void stop() {
    club.close();
  }

  @TestFactory
  Stream<DynamicTest> letEachRowBeTakenByItsRoleAlone() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Route route : club.routes()) {
      CALLERS.forEach(
          (name, caller) ->
              tests.add(
                  DynamicTest.dynamicTest(
                      route.method() + " " + route.path() + " by " + name,
                      () -> requireRole(route, name, call(route, caller.copy())))));
    }
    return tests.stream();
  }

  private static void requireRole(Route route, String caller, HttpResponse<String> response) {
    SecurityHeadersTest.requireHeaders(response);
    int status = response.statusCode();
    boolean nobody = caller.equals("nobody");
    if (!mayTake(route.role(), caller)) {
      boolean page = nobody && route.surface() == Surface.PAGE;
      assertThat(status).isEqualTo(page ? 303 : nobody ? 401 : 403);
    } else if (isOfClass1(route) && caller.endsWith("class 2") && !route.changes()) {
      assertThat(status).as("what is another's is not there").isEqualTo(404);
    } else {
      assertThat(status).as(response.body()).isLessThan(500);
      boolean refused = status == 401 || status == 403;
      assertThat(refused && !isOpenToGuesses(route)).isFalse();
    }
  }

  private static boolean mayTake(Role role, String caller) {
    return switch (role) {
      case ANYONE -> true;
      case SIGNED_IN -> !caller.equals("nobody");
      case LEARNER -> caller.startsWith("learner");
      case INSTRUCTOR -> caller.startsWith("instructor");
    };
  }

  /** Whether the path names something of class 1. */
  private static boolean isOfClass1(Route route) {
    return route.role() != Role.ANYONE && !path(route).equals(route.path());
  }

  /** Copies ask for a secret of their own. */
  private static boolean isOpenToGuesses(Route route) {
    return route.path().equals("/admin/backup");
  }

  private static HttpResponse<String> call(Route route, Browser caller) {
    club.time().pass(Duration.ofMinutes(10)); // what was refused before counts no more
    if (!route.changes()) {
      return caller.get(path(route));
    }
    boolean page = route.surface() == Surface.PAGE;
    String type = page ? "application/x-www-form-urlencoded" : "application/json";
    String body = page ? "" : "{}";
    // ends no session that the next row still needs
    boolean ends = route.path().endsWith("/session") || route.path().endsWith("/sign-out");
    Browser sent = ends ? fresh(caller) : caller;
    return sent.send(route.method().name(), path(route), type, BodyPublishers.ofString(body));
  }

  private static Browser fresh(Browser caller) {
    JsonNode session = json(caller.get("/api/session"));
    boolean instructor = "instructor".equals(session.path("role").textValue());
    if (instructor) {
      return club.instructor();
    }
    boolean nobody = session.path("role").isMissingNode();
    return nobody
        ? caller
        : club.learner(first.get("code").textValue(), "Dunlin" + System.nanoTime());
  }

  private static String path(Route route) {
    String id = route.path().contains("/classes/") ? first.get("id").textValue() : drill;
    return route
        .path()
        .replace("{id}", id)
        .replace("{assignment}", drill)
        .replace("{item}", answered)
        .replaceAll("[{<]\\w+[}>]", "none");
  }

  @Test
  void nothingIsServedTwice() {
    assertThat(club.routes().stream().map(each -> each.method() + " " + each.path()).toList())
        .doesNotHaveDuplicates();
  }
}
