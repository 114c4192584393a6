package withy.walkthrough;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import withy.core.item.Concept;
import withy.web.Browser;

/** Somebody who calls the server by a script: signed in, with the token that calls need. */
public final class Script {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Browser http;

  private Script(Browser http) {
    this.http = http;
  }

  /** The first instructor, who sets the server up. */
  public static Script instructor(int port, String setUpCode) {
    Browser http = new Browser(port);
    ObjectNode person = JSON.createObjectNode();
    person.put("name", "Marlo").put("password", "a long walk on the pier");
    require(
        201,
        http.postJson(
            "/api/instructors", person.deepCopy().put("setUpCode", setUpCode).toString()));
    require(200, http.postJson("/api/sign-in", person.toString()));
    return signedIn(http);
  }

  /** A learner who joins a class. */
  public static Script learner(int port, String code, String nickname) {
    Browser http = new Browser(port);
    ObjectNode join = JSON.createObjectNode().put("code", code).put("nickname", nickname);
    require(201, http.postJson("/api/join", join.toString()));
    return signedIn(http);
  }

  private static Script signedIn(Browser http) {
    String token = require(200, http.get("/api/session")).get("token").textValue();
    return new Script(http.with("X-Request-Token", token));
  }

  /** The same person on the same session, where the server has another port. */
  public Script at(int port) {
    return signedIn(new Browser(port).withCookie(http.cookie()));
  }

  /** Opens a class: its id and its code. */
  public JsonNode openClass(String name) {
    ObjectNode body = JSON.createObjectNode().put("name", name).put("practice", "iala-a");
    return require(201, http.postJson("/api/classes", body.toString()));
  }

  /** Assigns a drill by day and night: its id. */
  public String assign(String schoolClass, int length, List<Concept> concepts) {
    ObjectNode body = JSON.createObjectNode().put("class", schoolClass).putNull("due");
    ObjectNode composition =
        body.putObject("composition").put("time", "both").put("length", length);
    composition.putArray("forms");
    var named = composition.putArray("concepts");
    concepts.forEach(each -> named.add(each.id()));
    return require(201, http.postJson("/api/assignments", body.toString())).get("id").textValue();
  }

  /** The item to answer, null when the drill is done. */
  public @Nullable JsonNode next(String assignment) {
    HttpResponse<String> next = http.get("/api/assignments/" + assignment + "/next");
    return next.statusCode() == 204 ? null : require(200, next);
  }

  /** Sends an answer. */
  public HttpResponse<String> answer(UUID id, String item, JsonNode option) {
    ObjectNode body = JSON.createObjectNode().put("id", id.toString());
    body.put("item", item).put("shownMs", 1500).set("option", option);
    return http.postJson("/api/responses", body.toString());
  }

  /** What a path gives, which must be there. */
  public String text(String path) {
    HttpResponse<String> answer = http.get(path);
    if (answer.statusCode() != 200) {
      throw new AssertionError(path + ": " + answer.statusCode() + " " + answer.body());
    }
    return answer.body();
  }

  static JsonNode json(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode require(int status, HttpResponse<String> answer) {
    if (answer.statusCode() != status) {
      throw new AssertionError(answer.uri() + ": " + answer.statusCode() + " " + answer.body());
    }
    return json(answer.body());
  }
}
