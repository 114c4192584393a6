package withy.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;
import static withy.ClubServer.response;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.ClubServer;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.item.Misconception;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.web.Browser;

class DrillApiTest {
  private static final List<String> SHOWN =
      List.of(
          "item",
          "form",
          "prompt",
          "picture",
          "plan",
          "position",
          "facts",
          "options",
          "answer",
          "slots",
          "parts");

  private static ClubServer club;
  private static Browser instructor;
  private static int learners;

  private JsonNode schoolClass;
  private String assignment;
  private Browser learner;

  @BeforeAll
  static void start() {
    club = ClubServer.start();
    instructor = club.instructor();
  }

  @AfterAll
  static void stop() {
    club.close();
  }

  @BeforeEach
  void assign() {
    schoolClass = ClubServer.schoolClass(instructor, "iala-a");
    assignment = ClubServer.assignment(instructor, schoolClass.get("id").textValue(), 200);
    learner = newLearner();
  }

  @Test
  void givesTheSameItemUntilItIsAnswered() {
    JsonNode first = next();
    for (int i = 0; i < 5; i++) {
      assertThat(next()).isEqualTo(first);
    }
    assertThat(respond(first, null).statusCode()).isEqualTo(201);
    assertThat(next().get("item")).isNotEqualTo(first.get("item"));
  }

  @Test
  void givesFeedbackWithTheKeyOnceTheAnswerIsStored() {
    JsonNode item = nextChoice();
    String option = item.get("options").get(0).get("value").textValue();
    HttpResponse<String> answered = respond(item, option);
    assertThat(answered.statusCode()).isEqualTo(201);
    JsonNode feedback = json(answered);
    assertThat(feedback.get("correct").booleanValue())
        .isEqualTo(feedback.get("key").textValue().equals(option));
    assertThat(feedback.get("misconception").isNull())
        .isEqualTo(feedback.get("correct").booleanValue());
    assertThat(feedback.get("explanation").textValue()).isNotBlank();
    assertThat(textOf(item, feedback.get("key").textValue()))
        .isEqualTo(feedback.get("keyText").textValue());
  }

  @Test
  void takesNotSureForAResponseThatIsNotCorrect() {
    JsonNode feedback = json(respond(next(), null));
    assertThat(feedback.get("correct").booleanValue()).isFalse();
    assertThat(feedback.get("misconception").isNull()).isTrue();
  }

  @Test
  void saysTheSameWhenAResponseIsSentAgain() {
    JsonNode item = next();
    String sent = response(item.get("item").textValue(), null);
    HttpResponse<String> first = learner.postJson("/api/responses", sent);
    HttpResponse<String> again = learner.postJson("/api/responses", sent);
    assertThat(first.statusCode()).isEqualTo(201);
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.body()).isEqualTo(first.body());
    assertThat(respond(item, null).statusCode()).as("another id").isEqualTo(409);
  }

  @Test
  void hidesTheItemsOfOthers() {
    JsonNode item = next();
    Browser other = newLearner();
    String sent = response(item.get("item").textValue(), null);
    assertThat(other.postJson("/api/responses", sent).statusCode()).isEqualTo(404);
    assertThat(respondTo("no-such-item", null).statusCode()).isEqualTo(404);
    assertThat(learner.get("/api/assignments/none/next").statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "id       | 'x'                | 422 | id",
        "id       | 1                  | 422 | id",
        "id       | '1-1-1-1-1'        | 422 | id",
        "id       | null               | 422 | id",
        "item     | 7                  | 422 | item",
        "item     | null               | 422 | item",
        "item     | {}                 | 422 | item",
        "option   | 'leave-to-port'    | 422 | option",
        "option   | ''                 | 422 | option",
        "option   | {}                 | 422 | option",
        "option   | {'body':'a'}       | 422 | option",
        "option   | true               | 422 | option",
        "option   | 7                  | 422 | option",
        "option   | ['a']              | 422 | option",
        "shownMs  | '4'                | 422 | shownMs",
        "shownMs  | 1.5                | 422 | shownMs",
        "shownMs  | -1                 | 422 | shownMs",
        "shownMs  | 1e99               | 422 | shownMs",
        "shownMs  | 99999999999999999999 | 422 | shownMs",
        "shownMs  | null               | 422 | shownMs",
        "more     | 1                  | 422 | more",
      })
  void namesTheFieldThatIsNotAsItMustBe(String field, String value, int status, String named)
      throws Exception {
    ObjectNode sent =
        (ObjectNode)
            new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(response(nextChoice().get("item").textValue(), null));
    sent.put("id", UUID.randomUUID().toString());
    String json = sent.put(field, "@").toString().replace("\"@\"", value.replace('\'', '"'));
    HttpResponse<String> response = learner.postJson("/api/responses", json);
    requireProblem(response, status);
    assertThat(json(response).get("field").textValue()).isEqualTo(named);
  }

  @ParameterizedTest
  @CsvSource({"id", "item", "option", "shownMs"})
  void asksForEveryField(String field) throws Exception {
    ObjectNode sent =
        (ObjectNode)
            new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(response(next().get("item").textValue(), null));
    sent.remove(field);
    HttpResponse<String> response = learner.postJson("/api/responses", sent.toString());
    requireProblem(response, 422);
    assertThat(json(response).get("field").textValue()).isEqualTo(field);
    assertThat(json(response).get("type").textValue()).endsWith("missing-field");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                 | 400",
        "'{'                | 400",
        "nonsense           | 400",
        "'{} {}'            | 400",
        "'{\"id\":1,\"id\":2}' | 400",
        "'{\"id\":NaN}'     | 400",
        "'{''id'':1}'       | 400",
        "[]                 | 422",
        "7                  | 422",
        "null               | 422",
        "'{}'               | 422",
      })
  void tellsNoJsonFromJsonThatDoesNotDo(String body, int status) {
    requireProblem(learner.postJson("/api/responses", body), status);
  }

  @Test
  void refusesJsonThatIsTooDeep() {
    String deep = "{\"id\":" + "[".repeat(5000) + "]".repeat(5000) + "}";
    requireProblem(learner.postJson("/api/responses", deep), 400);
  }

  @Test
  void takesNothingButJson() {
    requireProblem(learner.postForm("/api/responses", "id=1"), 415);
    requireProblem(learner.call("POST", "/api/responses"), 415);
  }

  @Test
  void storesOneOfTwoAnswersThatCameAtOnce() throws Exception {
    JsonNode item = next();
    int phones = 8;
    CyclicBarrier barrier = new CyclicBarrier(phones);
    ExecutorService threads = Executors.newFixedThreadPool(phones);
    List<Callable<Integer>> taps = new ArrayList<>();
    for (int i = 0; i < phones; i++) {
      taps.add(
          () -> {
            barrier.await();
            return respond(item, null).statusCode();
          });
    }
    List<Integer> statuses = new ArrayList<>();
    for (Future<Integer> each : threads.invokeAll(taps)) {
      statuses.add(each.get());
    }
    threads.shutdown();
    assertThat(statuses).containsOnlyOnce(201).containsOnly(201, 409);
  }

  @Test
  void givesOneFeedbackToOneResponseSentTwiceAtOnce() throws Exception {
    String sent = response(next().get("item").textValue(), null);
    CyclicBarrier barrier = new CyclicBarrier(2);
    ExecutorService threads = Executors.newFixedThreadPool(2);
    Callable<HttpResponse<String>> tap =
        () -> {
          barrier.await();
          return learner.postJson("/api/responses", sent);
        };
    List<Future<HttpResponse<String>>> both = threads.invokeAll(List.of(tap, tap));
    threads.shutdown();
    HttpResponse<String> one = both.get(0).get();
    HttpResponse<String> two = both.get(1).get();
    assertThat(List.of(one.statusCode(), two.statusCode())).containsExactlyInAnyOrder(200, 201);
    assertThat(one.body()).isEqualTo(two.body());
  }

  @Test
  void isDoneWhenAllIsAnswered() {
    String classId = schoolClass.get("id").textValue();
    assignment = ClubServer.assignment(instructor, classId, 2);
    respond(next(), null);
    respond(next(), null);
    HttpResponse<String> done = learner.get("/api/assignments/" + assignment + "/next");
    assertThat(done.statusCode()).isEqualTo(204);
    assertThat(done.body()).isEmpty();
    JsonNode all = json(learner.get("/api/assignments"));
    JsonNode own = all.get(0).get("id").textValue().equals(assignment) ? all.get(0) : all.get(1);
    assertThat(own.get("answered").intValue()).isEqualTo(2);
    assertThat(own.get("length").intValue()).isEqualTo(2);
    assertThat(own.get("due").isNull()).isTrue();
  }

  @Test
  void slowsDownALearnerWhoSendsMoreThanAPersonAnswers() {
    Browser other = newLearner();
    for (int i = 0; i < 20; i++) {
      assertThat(respondTo("none", null).statusCode()).isEqualTo(404);
    }
    HttpResponse<String> over = respondTo("none", null);
    requireProblem(over, 429);
    assertThat(over.headers().firstValue("Retry-After")).hasValue("1");
    String sent = response("none", null);
    assertThat(other.postJson("/api/responses", sent).statusCode()).isEqualTo(404);
    club.time().pass(Duration.ofSeconds(1));
    assertThat(respondTo("none", null).statusCode()).isEqualTo(404);
  }

  @Test
  void tellsNothingOfTheKeyBeforeTheAnswer() {
    for (String practice : List.of("iala-a", "iala-b", "canada", "usa")) {
      JsonNode other = ClubServer.schoolClass(instructor, practice);
      String drill = ClubServer.assignment(instructor, other.get("id").textValue(), 100);
      Browser one = club.learner(other.get("code").textValue(), "Tern");
      for (int i = 0; i < 15; i++) {
        HttpResponse<String> shown = one.get("/api/assignments/" + drill + "/next");
        requireSecrecy(shown);
        one.postJson("/api/responses", response(json(shown).get("item").textValue(), null));
        club.time().pass(Duration.ofSeconds(1));
      }
    }
  }

  private static void requireSecrecy(HttpResponse<String> shown) {
    ObjectNode item = (ObjectNode) json(shown);
    assertThat(item.properties().stream().map(java.util.Map.Entry::getKey))
        .contains("item", "form", "prompt", "picture", "plan", "position", "facts", "options")
        .isSubsetOf(SHOWN);
    for (JsonNode option : item.get("options")) {
      assertThat(option.properties().stream().map(java.util.Map.Entry::getKey))
          .containsExactly("value", "text");
      assertThat(option.get("value").textValue()).matches("[\\w-]{12}");
    }
    for (JsonNode part : item.path("parts")) {
      assertThat(part.properties().stream().map(java.util.Map.Entry::getKey))
          .containsExactly("part", "label", "text", "choices");
      part.get("choices").forEach(choice -> ((ObjectNode) choice).remove(List.of("text", "value")));
    }
    // what is written for people says what it says; the rest must not
    List.of("prompt", "facts", "form").forEach(item::remove);
    item.get("options").forEach(option -> ((ObjectNode) option).remove("text"));
    // an opaque value was looked at above; chance may spell any short word in it
    item.get("options").forEach(option -> ((ObjectNode) option).remove("value"));
    String rest = item.toString() + shown.headers().map();
    assertThat(rest)
        .doesNotContain(
            Practice.IALA_B.kinds().stream().map(MarkKind::id).toArray(CharSequence[]::new))
        .doesNotContain(words(Concept.values()))
        .doesNotContain(words(Misconception.values()));
    assertThat(rest)
        .doesNotContain(
            "leave-to-", "either-side", "keep-clear", "pass-north", "pass-south", "steer-")
        .doesNotContainIgnoringCase("misconception", "seed", "correct");
    assertThat(rest).doesNotContain("\"key\"", "explanation");
  }

  private static CharSequence[] words(Term[] terms) {
    return java.util.Arrays.stream(terms)
        .map(Term::id)
        .filter(id -> id.contains("-"))
        .toArray(CharSequence[]::new);
  }

  private Browser newLearner() {
    return club.learner(schoolClass.get("code").textValue(), "Tern " + learners++);
  }

  private JsonNode next() {
    HttpResponse<String> next = learner.get("/api/assignments/" + assignment + "/next");
    assertThat(next.statusCode()).isEqualTo(200);
    return json(next);
  }

  /** The next item that offers options. */
  private JsonNode nextChoice() {
    JsonNode item = next();
    while (item.get("options").isEmpty()) {
      respond(item, null);
      item = next();
    }
    return item;
  }

  private HttpResponse<String> respond(JsonNode item, String option) {
    return respondTo(item.get("item").textValue(), option);
  }

  private HttpResponse<String> respondTo(String item, String option) {
    return learner.postJson("/api/responses", response(item, option));
  }

  private static String textOf(JsonNode item, String value) {
    for (JsonNode option : item.get("options")) {
      if (option.get("value").textValue().equals(value)) {
        return option.get("text").textValue();
      }
    }
    return quoted("no option '" + value + "'");
  }

  static void requireProblem(HttpResponse<String> response, int status) {
    assertThat(response.statusCode()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type"))
        .hasValue("application/problem+json; charset=utf-8");
    JsonNode problem = json(response);
    assertThat(problem.get("status").intValue()).isEqualTo(status);
    assertThat(problem.get("type").textValue()).startsWith("urn:problem:withy:");
    assertThat(problem.get("title").textValue()).isNotBlank();
    assertThat(problem.get("detail").textValue()).isNotBlank();
    assertThat(problem.get("instance").textValue()).startsWith("/");
  }
}
