package withy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import withy.catalogue.DrillSetCatalogue;
import withy.catalogue.WaterReader;
import withy.core.item.ItemGenerator;
import withy.fixture.AnyAnswer;
import withy.store.Store;
import withy.usecase.ItemSource;
import withy.usecase.School;
import withy.web.Browser;
import withy.web.HandClock;
import withy.web.Route;
import withy.web.Server;

/** The whole server over a data folder, with people who use it over HTTP. */
public final class ClubServer implements AutoCloseable {
  private static final String PASSWORD = "a long walk on the pier";
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final Path folder;
  private final Store store;
  private final School school;
  private final HandClock time = new HandClock();
  private final List<Route> routes;
  private final Server server;

  private ClubServer(Path folder, Store store, ItemSource source) throws IOException {
    this.folder = folder;
    this.store = store;
    this.school = School.over(store.ports(new WaterReader(), new DrillSetCatalogue()), source);
    Server.Parts parts = new Wiring(school.clock(), time.limits()).parts(school.cases(), store);
    this.routes = parts.routes();
    this.server = Server.start("127.0.0.1", 0, parts);
  }

  /** A server over a new data folder. */
  public static ClubServer start() {
    return start(ItemGenerator::item);
  }

  /** A server over a new data folder that asks items from a source. */
  public static ClubServer start(ItemSource source) {
    try {
      return in(Files.createTempDirectory("withy"), source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A server over a data folder. */
  public static ClubServer in(Path folder) {
    return in(folder, ItemGenerator::item);
  }

  private static ClubServer in(Path folder, ItemSource source) {
    try {
      return new ClubServer(folder, Store.open(folder, java.time.Clock.systemUTC()), source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All that is served. */
  public List<Route> routes() {
    return routes;
  }

  public HandClock time() {
    return time;
  }

  public School school() {
    return school;
  }

  /** Where it listens. */
  public int port() {
    return server.port();
  }

  public Browser nobody() {
    return new Browser(server.port());
  }

  /** The instructor, who sets the server up when first asked for. */
  public Browser instructor() {
    if (school.cases().setUp().needed()) {
      String code = school.cases().setUp().code();
      String json = "{'setUpCode':'%s','name':'Marlo','password':'%s'}".formatted(code, PASSWORD);
      assertThat(nobody().postJson("/api/instructors", quoted(json)).statusCode()).isEqualTo(201);
    }
    return signedIn("Marlo");
  }

  /** A second instructor on the same server, whom the first invites when first asked for. */
  public Browser otherInstructor() {
    Browser first = instructor();
    if (store.ports().instructors().byName("quill").isEmpty()) {
      String code = json(first.postJson("/api/invitations", "{}")).get("code").textValue();
      String json = "{'invitation':'%s','name':'Quill','password':'%s'}".formatted(code, PASSWORD);
      assertThat(nobody().postJson("/api/instructors", quoted(json)).statusCode()).isEqualTo(201);
    }
    return signedIn("Quill");
  }

  private Browser signedIn(String name) {
    Browser browser = nobody();
    String json = quoted("{'name':'%s','password':'%s'}".formatted(name, PASSWORD));
    assertThat(browser.postJson("/api/sign-in", json).statusCode()).isEqualTo(200);
    return withToken(browser);
  }

  /** A learner who joins the class of a code. */
  public Browser learner(String code, String nickname) {
    Browser browser = nobody();
    String json = quoted("{'code':'%s','nickname':'%s'}".formatted(code, nickname));
    assertThat(browser.postJson("/api/join", json).statusCode()).isEqualTo(201);
    return withToken(browser);
  }

  /** The same browser, which sends the token of its session from now on. */
  public static Browser withToken(Browser browser) {
    String token = json(browser.get("/api/session")).get("token").textValue();
    return browser.with("X-Request-Token", token);
  }

  /** A class of an instructor: its id and code. */
  public static JsonNode schoolClass(Browser instructor, String practice) {
    String json = quoted("{'name':'Tuesday','practice':'%s'}".formatted(practice));
    return json(instructor.postJson("/api/classes", json));
  }

  /** The id of a new assignment for a class. */
  public static String assignment(Browser instructor, String classId, int length) {
    String json = "{'class':'%s','composition':{'length':%d}}".formatted(classId, length);
    return json(instructor.postJson("/api/assignments", quoted(json))).get("id").textValue();
  }

  /** A response under a new id. */
  public static String response(String item, String option) {
    String quotedOption = option == null ? "null" : "'" + option + "'";
    return quoted(
        "{'id':'%s','item':'%s','option':%s,'shownMs':4000}"
            .formatted(UUID.randomUUID(), item, quotedOption));
  }

  /** A response under a new id with any answer that the item can be given. */
  public static String response(JsonNode item) {
    ObjectNode sent = JSON.createObjectNode().put("id", UUID.randomUUID().toString());
    sent.put("item", item.get("item").textValue()).put("shownMs", 4000);
    return sent.set("option", AnyAnswer.to(item)).toString();
  }

  /** JSON that was written with single quotes. */
  public static String quoted(String json) {
    return json.replace('\'', '"');
  }

  public static JsonNode json(HttpResponse<String> response) {
    try {
      return JSON.readTree(response.body());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(response.body(), e);
    }
  }

  public void stop() {
    server.stop();
    store.close();
  }

  @Override
  public void close() {
    stop();
  }
}
