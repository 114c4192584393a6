package withy.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;
import static withy.ClubServer.response;
import static withy.web.api.DrillApiTest.requireProblem;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.ClubServer;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.exchange.ResponsesCsv;
import withy.exchange.ReviewJson;
import withy.web.Browser;

class ClassApiTest {
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

  @Test
  void assignsEveryDrillSetUnderItsOwnTitle() {
    String classId = ClubServer.schoolClass(instructor, "iala-a").get("id").textValue();
    JsonNode sets = json(instructor.get("/api/drill-sets"));
    assertThat(sets.findValuesAsText("id")).contains("first-evening", "by-night");
    for (JsonNode set : sets) {
      String body =
          quoted("{'class':'" + classId + "','drillSet':'" + set.get("id").textValue() + "'}");
      HttpResponse<String> response = instructor.postJson("/api/assignments", body);
      assertThat(response.statusCode()).isEqualTo(201);
    }
    HttpResponse<String> page = instructor.get("/classes/" + classId);
    assertThat(page.body()).contains(sets.get(0).get("title").textValue());
  }

  @Test
  void countsWhatAClassWillMeetAndAssignsTheVeryDrillThatWasCounted() {
    String classId = ClubServer.schoolClass(instructor, "iala-a").get("id").textValue();
    String drill =
        "'class':'"
            + classId
            + "','kind':'fixed','composition':{'concepts':['safe-water'],'length':7}";
    JsonNode counted =
        json(instructor.postJson("/api/compositions/preview", quoted("{" + drill + "}")));
    assertThat(counted.get("exact").booleanValue()).isTrue();
    assertThat(counted.get("concepts").get(0).get("id").textValue()).isEqualTo("safe-water");
    assertThat(counted.get("concepts").get(0).get("items").doubleValue()).isEqualTo(7);
    String seed = counted.get("seed").textValue();
    String seeded = quoted("{" + drill + ",'seed':'" + seed + "'}");
    assertThat(json(instructor.postJson("/api/compositions/preview", seeded))).isEqualTo(counted);
    assertThat(instructor.postJson("/api/assignments", seeded).statusCode()).isEqualTo(201);
    String unfit = quoted("{" + drill + ",'seed':'any'}");
    assertThat(instructor.postJson("/api/compositions/preview", unfit).statusCode()).isEqualTo(422);
  }

  @ParameterizedTest
  @CsvSource({"iala-a", "iala-b", "canada", "usa"})
  void opensAClassUnderEachPractice(String practice) {
    JsonNode opened = ClubServer.schoolClass(instructor, practice);
    assertThat(opened.get("code").textValue()).matches("[2-9A-Z]{6}");
    JsonNode all = json(instructor.get("/api/classes"));
    assertThat(all.findValuesAsText("id")).contains(opened.get("id").textValue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'practice':'usa'}                           | name",
        "{'name':'','practice':'usa'}                 | name",
        "{'name':'Tuesday'}                           | practice",
        "{'name':'Tuesday','practice':'elsewhere'}    | practice",
        "{'name':'Tuesday','practice':'usa','id':'1'} | id",
      })
  void opensNoClassThatIsNotAsItMustBe(String body, String field) {
    HttpResponse<String> response = instructor.postJson("/api/classes", quoted(body));
    requireProblem(response, 422);
    assertThat(json(response).get("field").textValue()).isEqualTo(field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'composition':{'length':1}",
        "'title':null,'due':null,'composition':{'length':200,'time':'both'}",
        "'title':'Before Sunday','due':'2026-06-01T18:00:00Z','composition':{'length':5}",
        "'due':'2026-06-01T20:00:00+02:00','composition':{'length':5,'concepts':[],'forms':[]}",
        "'composition':{'length':5,'concepts':['lateral-side'],'forms':['side'],'time':'day'}",
      })
  void assignsADrill(String rest) {
    String classId = ClubServer.schoolClass(instructor, "iala-a").get("id").textValue();
    HttpResponse<String> response = assign(classId, rest);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(201);
    assertThat(json(response).get("id").textValue()).isNotBlank();
  }

  @Test
  void tellsLearnersUntilWhenInUniversalTime() {
    JsonNode opened = ClubServer.schoolClass(instructor, "iala-a");
    assign(
        opened.get("id").textValue(),
        "'title':'Soon','due':'2026-06-01T20:00:00+02:00','composition':{'length':5}");
    Browser learner = club.learner(opened.get("code").textValue(), "Tern");
    JsonNode own = json(learner.get("/api/assignments")).get(0);
    assertThat(own.get("due").textValue()).isEqualTo("2026-06-01T18:00:00Z");
    assertThat(own.get("title").textValue()).isEqualTo("Soon");
    assertThat(own.get("answered").intValue()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'composition':{'length':0}                          | composition.length",
        "'composition':{'length':201}                        | composition.length",
        "'composition':{'length':'5'}                        | composition.length",
        "'composition':{}                                    | composition.length",
        "'composition':{'length':5,'time':'dusk'}            | composition.time",
        "'composition':{'length':5,'time':5}                 | composition.time",
        "'composition':{'length':5,'forms':['essay']}        | composition.forms",
        "'composition':{'length':5,'concepts':['tides']}     | composition.concepts",
        "'composition':{'length':5,'concepts':'lateral-side'} | composition.concepts",
        "'composition':{'length':5,'concepts':[null]}        | composition.concepts",
        "'composition':{'length':5,'more':1}                 | composition.more",
        "'composition':[]                                    | composition",
        "'title':'no drill'                                  | composition",
        "'drillSet':'none'                                   | drillSet",
        "'due':'tomorrow','composition':{'length':5}         | due",
        "'due':'2026-06-01','composition':{'length':5}       | due",
        "'due':5,'composition':{'length':5}                  | due",
        "'due':'-999999999-01-01T00:00:00+18:00','composition':{'length':5} | due",
        "'opens':'+10000-01-01T00:00:00Z','composition':{'length':5} | opens",
        "'title':5,'composition':{'length':5}                | title",
      })
  void assignsNoDrillThatIsNotAsItMustBe(String rest, String field) {
    String classId = ClubServer.schoolClass(instructor, "iala-a").get("id").textValue();
    HttpResponse<String> response = assign(classId, rest);
    requireProblem(response, 422);
    assertThat(json(response).get("field").textValue()).isEqualTo(field);
  }

  @Test
  void assignsNothingToAClassThatIsNotThere() {
    requireProblem(assign("none", "'composition':{'length':5}"), 404);
  }

  @Test
  void assignsNothingThatLeavesNoItem() {
    String classId = ClubServer.schoolClass(instructor, "usa").get("id").textValue();
    String drill = "'composition':{'length':5,'concepts':['cardinal-side']}";
    requireProblem(assign(classId, drill), 422);
  }

  @Test
  void reviewsAndExportsTheSameResponses() throws Exception {
    JsonNode opened = ClubServer.schoolClass(instructor, "iala-a");
    String classId = opened.get("id").textValue();
    String drill = ClubServer.assignment(instructor, classId, 6);
    Browser learner = club.learner(opened.get("code").textValue(), "Ōtter d’Or");
    String first = null;
    for (int i = 0; i < 6; i++) {
      club.school().clock().pass(Duration.ofSeconds(4));
      JsonNode item = json(learner.get("/api/assignments/" + drill + "/next"));
      first = first == null ? item.get("item").textValue() : first;
      String unsure = response(item.get("item").textValue(), null);
      learner.postJson("/api/responses", i == 5 ? unsure : response(item));
    }
    HttpResponse<String> csv = instructor.get("/api/classes/" + classId + "/responses.csv");
    assertThat(csv.statusCode()).isEqualTo(200);
    assertThat(csv.headers().firstValue("Content-Type"))
        .hasValue("text/csv; charset=utf-8; header=present");
    assertThat(csv.headers().firstValue("Content-Disposition").orElseThrow())
        .startsWith("attachment; filename=\"responses Tuesday.csv\"; filename*=UTF-8''responses");
    byte[] bytes = csv.body().getBytes(StandardCharsets.UTF_8);
    List<Response> read = ResponsesCsv.read(new ByteArrayInputStream(bytes));
    assertThat(read).hasSize(6).allMatch(each -> each.learner().equals("Ōtter d’Or"));
    assertThat(read.get(0).item()).isEqualTo(first);
    assertThat(read.get(5).option()).isNull();
    HttpResponse<String> review = instructor.get("/api/classes/" + classId + "/review");
    assertThat(review.body()).isEqualTo(ReviewJson.write(Review.of(read)) + "\n");
  }

  @Test
  void reviewsAClassThatHasNotAnswered() {
    String classId = ClubServer.schoolClass(instructor, "iala-a").get("id").textValue();
    HttpResponse<String> review = instructor.get("/api/classes/" + classId + "/review");
    assertThat(review.statusCode()).isEqualTo(200);
    assertThat(json(review).get("concepts")).isEmpty();
    HttpResponse<String> csv = instructor.get("/api/classes/" + classId + "/responses.csv");
    assertThat(csv.body()).startsWith("learner,assignment,item,form,practice,concepts,key,option,");
    assertThat(csv.body()).endsWith("answeredAt,rapid\r\n");
  }

  private static HttpResponse<String> assign(String classId, String rest) {
    String json = quoted("{'class':'%s',%s}".formatted(classId, rest));
    return instructor.postJson("/api/assignments", json);
  }
}
