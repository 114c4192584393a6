package withy.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.ClubServer.json;
import static withy.ClubServer.quoted;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import withy.ClubServer;
import withy.web.Browser;

class EntryApiTest {
  private ClubServer club;

  @BeforeEach
  void start() {
    club = ClubServer.start();
  }

  @AfterEach
  void stop() {
    club.close();
  }

  @Test
  void setsTheServerUpOnce() {
    String code = club.school().cases().setUp().code();
    assertThat(setUp("WRONGCODE234", "a long walk").statusCode()).isEqualTo(403);
    assertThat(setUp(code, "short").statusCode()).isEqualTo(422);
    assertThat(json(setUp(code, "short")).get("field").textValue()).isEqualTo("password");
    assertThat(setUp(code, "a long walk").statusCode()).isEqualTo(201);
    HttpResponse<String> again = setUp(code, "a long walk");
    assertThat(again.statusCode()).isEqualTo(403);
    assertThat(json(again).get("type").textValue()).endsWith("wrong-set-up-code");
  }

  @Test
  void anInvitationMakesOneMoreInstructor() {
    Browser marlo = club.instructor();
    JsonNode invited = json(marlo.postJson("/api/invitations", "{}"));
    JsonNode open = json(marlo.get("/api/invitations"));
    assertThat(open.get(0).get("id")).isEqualTo(invited.get("id"));
    assertThat(open.toString()).doesNotContain(invited.get("code").textValue());
    String code = invited.get("code").textValue();
    HttpResponse<String> taken = invited(code, "Marlo");
    assertThat(taken.statusCode()).isEqualTo(409);
    assertThat(json(taken).get("field").textValue()).isEqualTo("name");
    assertThat(invited(code, "Quill").statusCode()).isEqualTo(201);
    HttpResponse<String> again = invited(code, "Rill");
    assertThat(again.statusCode()).isEqualTo(403);
    assertThat(json(again).get("field").textValue()).isEqualTo("invitation");
    assertThat(json(marlo.get("/api/invitations"))).isEmpty();
  }

  @Test
  void guessingInvitationsIsHeldUp() {
    club.instructor();
    for (int i = 0; i < 10; i++) {
      assertThat(invited("2222-2222-222" + (2 + i % 8), "Quill").statusCode()).isEqualTo(403);
    }
    assertThat(invited("2222-2222-2222", "Quill").statusCode()).isEqualTo(429);
  }

  @Test
  void aWithdrawnInvitationIsGoodForNothing() {
    Browser marlo = club.instructor();
    JsonNode invited = json(marlo.postJson("/api/invitations", "{}"));
    String one = "/api/invitations/" + invited.get("id").textValue();
    assertThat(club.otherInstructor().call("DELETE", one).statusCode()).isEqualTo(404);
    assertThat(marlo.call("DELETE", one).statusCode()).isEqualTo(204);
    assertThat(invited(invited.get("code").textValue(), "Rill").statusCode()).isEqualTo(403);
  }

  private HttpResponse<String> invited(String code, String name) {
    String json = "{'invitation':'%s','name':'%s','password':'a long walk on the pier'}";
    return club.nobody().postJson("/api/instructors", quoted(json.formatted(code, name)));
  }

  @Test
  void signsAnInstructorInAndOut() {
    club.instructor();
    Browser browser = club.nobody();
    assertThat(signIn(browser, "Marlo", "a long walk on the pier").statusCode()).isEqualTo(200);
    assertThat(json(browser.get("/api/session")).get("role").textValue()).isEqualTo("instructor");
    assertThat(json(browser.get("/api/session")).get("name").textValue()).isEqualTo("Marlo");
    Browser old = browser.copy();
    Browser tokened = ClubServer.withToken(browser);
    assertThat(tokened.call("DELETE", "/api/session").statusCode()).isEqualTo(204);
    assertThat(tokened.cookie()).isNull();
    assertThat(old.get("/api/session").statusCode()).isEqualTo(401);
  }

  @Test
  void refusesAWrongPasswordAndMakesItsGuesserWait() {
    club.instructor();
    HttpResponse<String> wrong = signIn(club.nobody(), "Marlo", "something else");
    assertThat(wrong.statusCode()).isEqualTo(401);
    assertThat(wrong.headers().firstValue("Set-Cookie")).isEmpty();
    HttpResponse<String> atOnce = signIn(club.nobody(), "Marlo", "a long walk on the pier");
    assertThat(atOnce.statusCode()).isEqualTo(429);
    assertThat(atOnce.headers().firstValue("Retry-After")).hasValue("1");
    club.school().clock().pass(Duration.ofSeconds(1));
    assertThat(signIn(club.nobody(), "Marlo", "a long walk on the pier").statusCode())
        .isEqualTo(200);
    assertThat(signIn(club.nobody(), "Nobody", "something else").statusCode()).isEqualTo(401);
  }

  @Test
  void givesANewSessionAtEveryEntry() {
    Browser instructor = club.instructor();
    Browser old = instructor.copy();
    String planted = "planted-by-somebody-else";
    Browser victim = club.nobody().withCookie(planted);
    assertThat(signIn(victim, "Marlo", "a long walk on the pier").statusCode()).isEqualTo(200);
    assertThat(victim.cookie()).isNotEqualTo(planted);
    assertThat(signIn(instructor, "Marlo", "a long walk on the pier").statusCode()).isEqualTo(200);
    assertThat(instructor.cookie()).isNotEqualTo(old.cookie());
    assertThat(old.get("/api/session").statusCode()).isEqualTo(401);
  }

  @Test
  void setsEveryAttributeOnTheCookie() {
    club.instructor();
    HttpResponse<String> response = signIn(club.nobody(), "Marlo", "a long walk on the pier");
    List<String> cookies = response.headers().allValues("Set-Cookie");
    assertThat(cookies).hasSize(1);
    assertThat(cookies.get(0))
        .matches("sid=[\\w-]{43}; Path=/; HttpOnly; SameSite=Lax; Max-Age=\\d+")
        .doesNotContain("Secure");
  }

  @Test
  void letsALearnerJoinAndComeBack() {
    String code = ClubServer.schoolClass(club.instructor(), "iala-a").get("code").textValue();
    Browser phone = club.nobody();
    HttpResponse<String> joined = join(phone, code, "Tern");
    assertThat(joined.statusCode()).isEqualTo(201);
    assertThat(json(phone.get("/api/session")).get("role").textValue()).isEqualTo("learner");
    String back = json(joined).get("returnCode").textValue();
    Browser other = club.nobody();
    HttpResponse<String> returned =
        other.postJson("/api/join", quoted("{'returnCode':'%s'}".formatted(back)));
    assertThat(returned.statusCode()).isEqualTo(200);
    assertThat(json(returned).get("learner")).isEqualTo(json(joined).get("learner"));
    assertThat(json(other.get("/api/session")).get("name").textValue()).isEqualTo("Tern");
  }

  @Test
  void saysWhyALearnerCannotJoin() {
    String code = ClubServer.schoolClass(club.instructor(), "iala-a").get("code").textValue();
    join(club.nobody(), code, "Tern");
    assertThat(join(club.nobody(), code, "tern").statusCode()).isEqualTo(409);
    assertThat(join(club.nobody(), code, "=1+1").statusCode()).isEqualTo(422);
    assertThat(join(club.nobody(), "ZZZZZZ", "Knot").statusCode()).isEqualTo(404);
    assertThat(club.nobody().postJson("/api/join", quoted("{'returnCode':'ZZZZ'}")).statusCode())
        .isEqualTo(404);
    String both = quoted("{'code':'%s','nickname':'a','returnCode':'b'}".formatted(code));
    assertThat(json(club.nobody().postJson("/api/join", both)).get("field").textValue())
        .isEqualTo("code");
  }

  @Test
  void letsAClassOfFortyJoinFromOneAddressInAMinute() {
    String code = ClubServer.schoolClass(club.instructor(), "iala-a").get("code").textValue();
    for (int i = 0; i < 40; i++) {
      assertThat(join(club.nobody(), code, "Tern " + i).statusCode()).isEqualTo(201);
    }
  }

  @Test
  void holdsUpWhoeverGuessesCodesWhateverHeadersSay() {
    String code = ClubServer.schoolClass(club.instructor(), "iala-a").get("code").textValue();
    for (int i = 0; i < 10; i++) {
      assertThat(guess(i)).isEqualTo(404);
    }
    assertThat(guess(11)).isEqualTo(429);
    HttpResponse<String> right = join(club.nobody(), code, "Tern");
    assertThat(right.statusCode()).isEqualTo(429);
    assertThat(right.headers().firstValue("Retry-After")).hasValue("6");
    club.time().pass(Duration.ofSeconds(6));
    assertThat(join(club.nobody(), code, "Tern").statusCode()).isEqualTo(201);
  }

  private int guess(int number) {
    Browser guesser = club.nobody().with("X-Forwarded-For", "192.0.2." + number);
    return join(guesser, "ZZZZZZ", "Tern").statusCode();
  }

  private HttpResponse<String> setUp(String code, String password) {
    String json = "{'setUpCode':'%s','name':'Marlo','password':'%s'}".formatted(code, password);
    return club.nobody().postJson("/api/instructors", quoted(json));
  }

  private static HttpResponse<String> signIn(Browser browser, String name, String password) {
    String json = quoted("{'name':'%s','password':'%s'}".formatted(name, password));
    return browser.postJson("/api/sign-in", json);
  }

  private static HttpResponse<String> join(Browser browser, String code, String nickname) {
    String json = quoted("{'code':'%s','nickname':'%s'}".formatted(code, nickname));
    return browser.postJson("/api/join", json);
  }
}
