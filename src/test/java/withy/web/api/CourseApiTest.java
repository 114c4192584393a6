package withy.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.ClubServer;
import withy.web.Browser;

/** Courses by scripts. */
class CourseApiTest {
  private static ClubServer club;
  private static Browser instructor;
  private static LocalDate practical;

  @BeforeAll
  static void start() {
    club = ClubServer.start();
    instructor = club.instructor();
    practical = LocalDate.ofInstant(club.school().clock().instant(), ZoneOffset.UTC);
    practical = practical.plusDays(30);
  }

  @AfterAll
  static void stop() {
    club.close();
  }

  private static HttpResponse<String> send(String method, String path, String body) {
    return send(instructor, method, path, body);
  }

  private static HttpResponse<String> send(
      Browser browser, String method, String path, String body) {
    return browser.send(method, path, "application/json", BodyPublishers.ofString(quoted(body)));
  }

  /** The path of a new course. */
  private static String course() {
    String body = "{'name':'Spring','practical':'%s','waters':['home-water']}";
    HttpResponse<String> made = send("POST", "/api/courses", body.formatted(practical));
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    return "/api/courses/" + json(made).get("id").textValue();
  }

  private static String schoolClass() {
    return ClubServer.schoolClass(instructor, "iala-a").get("id").textValue();
  }

  private static String planned() {
    String course = course();
    String body = "{'class':'%s','evenings':3}".formatted(schoolClass());
    HttpResponse<String> planned = send("PUT", course + "/plan", body);
    assertThat(planned.statusCode()).as(planned.body()).isEqualTo(200);
    return course;
  }

  @Test
  void makesShowsChangesAndForgetsACourse() {
    String course = course();
    JsonNode shown = json(instructor.get(course));
    assertThat(shown.get("name").textValue()).isEqualTo("Spring");
    assertThat(shown.get("practical").textValue()).isEqualTo(practical.toString());
    assertThat(shown.get("waters").get(0).textValue()).isEqualTo("home-water");
    assertThat(shown.get("plan")).isEmpty();
    assertThat(json(instructor.get("/api/courses"))).contains(shown);

    String other = "{'name':'Summer','practical':'%s'}".formatted(practical.plusDays(7));
    assertThat(send("PUT", course, other).statusCode()).isEqualTo(204);
    assertThat(json(instructor.get(course)).get("name").textValue()).isEqualTo("Summer");
    assertThat(json(instructor.get(course)).get("waters")).isEmpty();

    assertThat(send("DELETE", course, "").statusCode()).isEqualTo(204);
    assertThat(instructor.get(course).statusCode()).isEqualTo(404);
  }

  @Test
  void plansItsDaysAndSaysWhy() {
    JsonNode plan = json(instructor.get(planned())).get("plan");
    assertThat(plan.size()).isBetween(5, 10);
    LocalDate before = LocalDate.EPOCH;
    int together = 0;
    for (int day = 0; day < plan.size(); day++) {
      JsonNode each = plan.get(day);
      LocalDate on = LocalDate.parse(each.get("on").textValue());
      assertThat(each.get("day").intValue()).isEqualTo(day);
      assertThat(on).isAfter(before).isBefore(practical);
      assertThat(on.plusDays(each.get("daysLeft").intValue())).isEqualTo(practical);
      assertThat(each.get("first").size() + each.get("again").size()).isPositive();
      assertThat(each.get("why").textValue()).isNotBlank();
      together += each.get("together").booleanValue() ? 1 : 0;
      before = on;
    }
    assertThat(together).isEqualTo(3);
    assertThat(plan.get(0).get("purpose").textValue()).isEqualTo("first-meeting");
    assertThat(plan.get(0).get("why").textValue()).startsWith("Met now");
  }

  @Test
  void drillsASetOnADayAndAgainWhatWasProposed() {
    String course = planned();
    assertThat(send("PUT", course + "/plan/1", "{'drillSet':'by-night'}").statusCode())
        .isEqualTo(204);
    JsonNode day = json(instructor.get(course)).get("plan").get(1);
    assertThat(day.get("drillSet").textValue()).isNotBlank();
    assertThat(day.get("why").textValue()).startsWith("A drill set of your choice");
    assertThat(send("PUT", course + "/plan/1", "{'drillSet':null}").statusCode()).isEqualTo(204);
    assertThat(json(instructor.get(course)).get("plan").get(1).get("drillSet").isNull()).isTrue();
    assertThat(send("PUT", course + "/plan/99", "{'drillSet':null}").statusCode()).isEqualTo(404);
    HttpResponse<String> unknown = send("PUT", course + "/plan/1", "{'drillSet':'nothing'}");
    assertThat(unknown.statusCode()).isEqualTo(422);
    assertThat(json(unknown).get("field").textValue()).isEqualTo("drillSet");
  }

  @Test
  void runsACourseAgainWithItsDaysMovedAlong() {
    String course = planned();
    String body = "{'name':'Autumn','practical':'%s'}".formatted(practical.plusDays(100));
    HttpResponse<String> again = send("POST", course + "/again", body);
    assertThat(again.statusCode()).isEqualTo(201);
    JsonNode made = json(instructor.get("/api/courses/" + json(again).get("id").textValue()));
    JsonNode before = json(instructor.get(course));
    assertThat(made.get("classes")).isEmpty();
    assertThat(made.get("plan")).hasSameSizeAs(before.get("plan"));
    LocalDate first = LocalDate.parse(before.get("plan").get(0).get("on").textValue());
    assertThat(made.get("plan").get(0).get("on").textValue())
        .isEqualTo(first.plusDays(100).toString());
  }

  @Test
  void letsClassesTakeACourseAndLeaveIt() {
    String course = course();
    String one = schoolClass();
    String path = course + "/classes";
    assertThat(send("PUT", path, "{'classes':['" + one + "']}").statusCode()).isEqualTo(204);
    assertThat(json(instructor.get(course)).get("classes").get(0).textValue()).isEqualTo(one);
    HttpResponse<String> unknown = send("PUT", path, "{'classes':['nothing']}");
    assertThat(unknown.statusCode()).isEqualTo(404);
    assertThat(json(unknown).get("field").textValue()).isEqualTo("classes");
    assertThat(send("PUT", path, "{'classes':[]}").statusCode()).isEqualTo(204);
    assertThat(json(instructor.get(course)).get("classes")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'practical':'2026-08-01'} | name",
        "{'name':' ','practical':'2026-08-01'} | name",
        "{'name':'Spring'} | practical",
        "{'name':'Spring','practical':'soon'} | practical",
        "{'name':'Spring','practical':'2026-02-30'} | practical",
        "{'name':'Spring','practical':'2026-08-01','waters':'x'} | waters",
        "{'name':'Spring','practical':'2026-08-01','colour':'x'} | colour"
      })
  void tellsWhatIsWrongAndWhere(String body, String field) {
    HttpResponse<String> refused = send("POST", "/api/courses", body);
    assertThat(refused.statusCode()).as(refused.body()).isEqualTo(422);
    assertThat(json(refused).get("field").textValue()).isEqualTo(field);
  }

  @ParameterizedTest
  @CsvSource({"0,UTC,evenings", "51,UTC,evenings", "3,Nowhere/Here,zone"})
  void tellsWhatNoPlanIsMadeFor(int evenings, String zone, String field) {
    String body = "{'class':'%s','evenings':%d,'zone':'%s'}";
    HttpResponse<String> refused =
        send("PUT", course() + "/plan", body.formatted(schoolClass(), evenings, zone));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(json(refused).get("field").textValue()).isEqualTo(field);
  }

  @Test
  void anothersCourseIsNotThere() {
    String course = planned();
    String before = instructor.get(course).body();
    Browser other = club.otherInstructor();
    String body = "{'name':'Mine','practical':'%s'}".formatted(practical);
    assertThat(other.get(course).statusCode()).isEqualTo(404);
    assertThat(other.get("/api/courses").body()).isEqualTo("[]");
    assertThat(send(other, "PUT", course, body).statusCode()).isEqualTo(404);
    assertThat(send(other, "POST", course + "/again", body).statusCode()).isEqualTo(404);
    assertThat(send(other, "PUT", course + "/classes", "{'classes':[]}").statusCode())
        .isEqualTo(404);
    assertThat(send(other, "PUT", course + "/plan/0", "{'drillSet':null}").statusCode())
        .isEqualTo(404);
    assertThat(send(other, "PUT", course + "/plan", "{'class':'x','evenings':3}").statusCode())
        .isEqualTo(404);
    assertThat(send(other, "DELETE", course, "").statusCode()).isEqualTo(404);
    assertThat(instructor.get(course).body()).isEqualTo(before);
  }
}
