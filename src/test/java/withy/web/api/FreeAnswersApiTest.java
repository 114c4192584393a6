package withy.web.api;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.web.api.DrillApiTest.requireProblem;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import withy.ClubServer;
import withy.core.measurement.Review;
import withy.core.response.Response;
import withy.exchange.ResponsesCsv;
import withy.exchange.ReviewJson;
import withy.fixture.AnyAnswer;
import withy.fixture.FreeItems;
import withy.web.Browser;

/** How scripts answer items that have no options. */
class FreeAnswersApiTest {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private static ClubServer numbers;
  private static ClubServer assemblies;
  private static ClubServer passages;
  private static int learners;

  @BeforeAll
  static void start() {
    numbers = ClubServer.start(FreeItems::number);
    assemblies = ClubServer.start(FreeItems::assembly);
    passages = ClubServer.start(FreeItems::passage);
  }

  @AfterAll
  static void stop() {
    numbers.close();
    assemblies.close();
    passages.close();
  }

  /** A learner with a drill. */
  private record Drilled(Browser learner, String drill, String schoolClass) {
    static Drilled at(ClubServer club) {
      Browser instructor = club.instructor();
      JsonNode made = ClubServer.schoolClass(instructor, "iala-a");
      String id = made.get("id").textValue();
      String drill = ClubServer.assignment(instructor, id, 9);
      return new Drilled(
          club.learner(made.get("code").textValue(), "Tern " + learners++), drill, id);
    }

    JsonNode next() {
      return json(learner.get("/api/assignments/" + drill + "/next"));
    }

    HttpResponse<String> send(JsonNode option) {
      return learner.postJson("/api/responses", response(option));
    }

    String response(JsonNode option) {
      ObjectNode sent = JSON.objectNode().put("id", UUID.randomUUID().toString());
      sent.put("item", next().get("item").textValue()).put("shownMs", 1);
      return sent.set("option", option).toString();
    }
  }

  @Test
  void asksForANumberAndTellsNoMoreThanItsUnit() {
    JsonNode item = Drilled.at(numbers).next();
    assertThat(item.get("options")).isEmpty();
    assertThat(item.get("answer")).hasToString("{\"unit\":\"M\"}");
    assertThat(item.has("slots")).isFalse();
    requireSecrecy(item);
    assertThat(item.toString()).doesNotContain("19.4", "0.6", "13.4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"19.4\"", "\"19,4 M\"", "19.4", "19.40", "20", "\"18.8\""})
  void takesANumberAsTextOrAsANumber(String option) throws Exception {
    HttpResponse<String> answered = Drilled.at(numbers).send(read(option));
    assertThat(answered.statusCode()).isEqualTo(201);
    JsonNode feedback = json(answered);
    assertThat(feedback.get("correct").booleanValue()).isTrue();
    assertThat(feedback.get("key").textValue()).isEqualTo("19.4");
    assertThat(feedback.get("keyText").textValue()).isEqualTo("19.4 M");
    assertThat(feedback.get("misconception").isNull()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"13.4, region-swapped", "12.2, direction-ignored", "99, unexplained"})
  void saysWhichBeliefLedToANumber(String number, String belief) {
    JsonNode feedback = json(Drilled.at(numbers).send(JSON.textNode(number)));
    assertThat(feedback.get("correct").booleanValue()).isFalse();
    assertThat(feedback.get("misconception").textValue()).isEqualTo(belief);
    assertThat(feedback.get("mistook").isNull()).isEqualTo(belief.equals("unexplained"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "''          | no-number",
        "'far'       | no-number",
        "'1 000'     | no-number",
        "1e99        | no-number",
        "{}          | no-number",
        "'19.4 km'   | other-unit",
        "['19.4']    | malformed-field",
        "true        | malformed-field",
      })
  void refusesWhatIsNoNumber(String option, String type) throws Exception {
    Drilled drilled = Drilled.at(numbers);
    JsonNode before = drilled.next();
    HttpResponse<String> refused = drilled.send(read(option.replace('\'', '"')));
    requireProblem(refused, 422);
    assertThat(json(refused).get("field").textValue()).isEqualTo("option");
    assertThat(json(refused).get("type").textValue()).endsWith(":" + type);
    assertThat(drilled.next()).isEqualTo(before);
  }

  @Test
  void offersPartsUnderTokensAndTellsNoMore() {
    JsonNode item = Drilled.at(assemblies).next();
    assertThat(item.get("options")).isEmpty();
    assertThat(item.has("answer")).isFalse();
    List<String> slots = new ArrayList<>();
    for (JsonNode slot : item.get("slots")) {
      slots.add(slot.get("slot").textValue());
      assertThat(slot.get("text").textValue()).isNotBlank();
      for (JsonNode choice : slot.get("choices")) {
        assertThat(choice.get("value").textValue()).matches("[\\w-]{12}");
        assertThat(choice.get("text").textValue()).isNotBlank();
        assertThat(choice).hasSize(2);
      }
    }
    assertThat(slots).containsExactly("body", "colours", "topmark", "light");
    requireSecrecy(item);
    assertThat(item.toString()).doesNotContain("Fl_R", "can/", "body/");
  }

  @Test
  void tellsTheRightPartsOnceTheAnswerIsStored() {
    Drilled drilled = Drilled.at(assemblies);
    JsonNode item = drilled.next();
    JsonNode feedback = json(drilled.send(AnyAnswer.to(item)));
    JsonNode key = feedback.get("key");
    assertThat(key).hasSize(4);
    assertThat(feedback.get("keyText").textValue()).isEqualTo("can, plain-red, can, Fl R 2.5s");
    for (JsonNode slot : item.get("slots")) {
      List<JsonNode> offered = slot.get("choices").findValues("value");
      assertThat(offered).contains(key.get(slot.get("slot").textValue()));
    }
    Drilled other = Drilled.at(assemblies);
    JsonNode first = json(other.send(JSON.nullNode()));
    assertThat(first.get("correct").booleanValue()).isFalse();
    assertThat(first.get("misconception").isNull()).isTrue();
  }

  @Test
  void takesTheKeyOfTheFeedbackForRight() {
    Drilled drilled = Drilled.at(assemblies);
    JsonNode right = JSON.objectNode();
    for (JsonNode slot : drilled.next().get("slots")) {
      String wanted =
          switch (slot.get("slot").textValue()) {
            case "colours" -> "plain-red";
            case "light" -> "Fl R 2.5s";
            default -> "can";
          };
      for (JsonNode choice : slot.get("choices")) {
        if (choice.get("text").textValue().equals(wanted)) {
          ((ObjectNode) right).set(slot.get("slot").textValue(), choice.get("value"));
        }
      }
    }
    JsonNode feedback = json(drilled.send(right));
    assertThat(feedback.get("correct").booleanValue()).isTrue();
    assertThat(feedback.get("key")).isEqualTo(right);
  }

  @Test
  void refusesPartsThatAreNotWholeOrNotOffered() {
    Drilled drilled = Drilled.at(assemblies);
    ObjectNode whole = (ObjectNode) AnyAnswer.to(drilled.next());
    refuses(drilled, whole.deepCopy().without("body"), "incomplete-answer");
    refuses(drilled, JSON.objectNode(), "incomplete-answer");
    refuses(drilled, JSON.textNode("can"), "incomplete-answer");
    refuses(drilled, whole.deepCopy().put("body", "can"), "unknown-option");
    refuses(drilled, whole.deepCopy().put("sound", "bell"), "unknown-option");
    refuses(drilled, whole.deepCopy().putNull("body"), "malformed-field");
    refuses(drilled, whole.deepCopy().put("body", 1), "malformed-field");
    assertThat(drilled.send(whole).statusCode()).isEqualTo(201);
  }

  @Test
  void offersTheSidesOfEachMarkUnderTokensAndTellsNoMore() {
    JsonNode item = Drilled.at(passages).next();
    assertThat(item.get("form").textValue()).isEqualTo("passage");
    assertThat(item.get("options")).isEmpty();
    assertThat(item.has("slots")).isFalse();
    int number = 0;
    for (JsonNode part : item.get("parts")) {
      assertThat(part.get("part").textValue()).isEqualTo(Integer.toString(number++));
      assertThat(part.get("text").textValue()).startsWith("Mark " + number);
      assertThat(part).hasSize(4);
      for (JsonNode choice : part.get("choices")) {
        assertThat(choice.get("value").textValue()).matches("[\\w-]{12}");
        assertThat(choice.get("text").textValue()).matches("To port|To starboard|On either side");
        assertThat(choice).hasSize(2);
      }
    }
    assertThat(number).isBetween(3, 6);
    requireSecrecy(item);
    assertThat(item.toString()).doesNotContain("leave-to", "track", "leastDepth", "wrong-channel");
  }

  @Test
  void takesASideForEachMarkAndTellsTheKeyAfterwards() {
    Drilled drilled = Drilled.at(passages);
    JsonNode first = drilled.next();
    JsonNode key = json(drilled.send(AnyAnswer.to(first))).get("key");
    for (JsonNode part : first.get("parts")) {
      assertThat(part.get("choices").findValues("value"))
          .contains(key.get(part.get("part").textValue()));
    }
    ObjectNode whole = (ObjectNode) AnyAnswer.to(drilled.next());
    refuses(drilled, whole.deepCopy().without("0"), "incomplete-answer");
    refuses(drilled, whole.deepCopy().put("0", "leave-to-port"), "unknown-option");
    refuses(drilled, whole.deepCopy().set("11", whole.get("0")), "unknown-option");
    assertThat(drilled.send(whole).statusCode()).isEqualTo(201);
  }

  @Test
  void exportsAPassageAsOneWordThatAReviewReads() throws Exception {
    Drilled drilled = Drilled.at(passages);
    drilled.send(AnyAnswer.to(drilled.next()));
    String path = "/api/classes/" + drilled.schoolClass();
    String csv = passages.instructor().get(path + "/responses.csv").body();
    Response read = ResponsesCsv.read(new ByteArrayInputStream(csv.getBytes(UTF_8))).get(0);
    assertThat(read.key()).matches("leave-to-(port|starboard)(/leave-to-(port|starboard)){2,5}");
    assertThat(read.option()).startsWith("leave-to-port/leave-to-port");
    assertThat(read.correct()).isFalse();
    assertThat(passages.instructor().get(path + "/review").body())
        .isEqualTo(ReviewJson.write(Review.of(List.of(read))) + "\n");
  }

  @Test
  void saysTheSameWhenAFreeAnswerIsSentAgain() {
    for (ClubServer each : List.of(numbers, assemblies, passages)) {
      Drilled drilled = Drilled.at(each);
      String sent = drilled.response(AnyAnswer.to(drilled.next()));
      HttpResponse<String> first = drilled.learner().postJson("/api/responses", sent);
      HttpResponse<String> again = drilled.learner().postJson("/api/responses", sent);
      assertThat(first.statusCode()).isEqualTo(201);
      assertThat(again.statusCode()).isEqualTo(200);
      assertThat(again.body()).isEqualTo(first.body());
    }
  }

  @Test
  void exportsAFreeAnswerAsOneWordThatAReviewReads() throws Exception {
    Drilled drilled = Drilled.at(assemblies);
    drilled.send(AnyAnswer.to(drilled.next()));
    String path = "/api/classes/" + drilled.schoolClass();
    String csv = assemblies.instructor().get(path + "/responses.csv").body();
    Response read = ResponsesCsv.read(new ByteArrayInputStream(csv.getBytes(UTF_8))).get(0);
    assertThat(read.key()).isEqualTo("can/plain-red/can/Fl_R_2.5s");
    assertThat(FreeItems.PORT_HAND.accepts(read.option())).isTrue();
    assertThat(read.offered()).isEmpty();
    assertThat(assemblies.instructor().get(path + "/review").body())
        .isEqualTo(ReviewJson.write(Review.of(List.of(read))) + "\n");
  }

  private static void refuses(Drilled drilled, JsonNode option, String type) {
    HttpResponse<String> refused = drilled.send(option);
    requireProblem(refused, 422);
    assertThat(json(refused).get("type").textValue()).endsWith(":" + type);
    assertThat(json(refused).get("field").textValue()).startsWith("option");
  }

  private static void requireSecrecy(JsonNode item) {
    assertThat(item.toString())
        .doesNotContain("\"key\"", "explanation", "tolerance", "beliefs", "misconception");
  }

  private static JsonNode read(String json) throws Exception {
    return new com.fasterxml.jackson.databind.ObjectMapper().readTree(json);
  }
}
