package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static withy.walkthrough.PlantedBelief.FORGETS_THE_DIRECTION;
import static withy.walkthrough.PlantedBelief.KNOWS;
import static withy.walkthrough.PlantedBelief.SWAPS_THE_REGION;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import withy.InProcessServer;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.item.Misconception;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.OpaqueOption;
import withy.usecase.UseCases;
import withy.walkthrough.PlantedBelief;
import withy.web.Browser;
import withy.wording.Wording;

/**
 * The whole job in a browser: an instructor sets up, makes a class and assigns a drill; eight
 * learners answer it, two of them on a phone, one of these without scripts; the instructor reads
 * what the class gets wrong and composes the next drill with one press.
 */
class DrillStoryIT {
  private static final int LENGTH = 24;
  private static final Wording WORDS = Wording.of(Locale.ENGLISH);
  private static final List<Concept> DRILLED =
      List.of(Concept.LATERAL_SIDE, Concept.CARDINAL_IDENTITY, Concept.SAFE_WATER);

  /** Forms in which an option is chosen; marks put together are tried elsewhere. */
  private static final List<Form> ASKED = List.of(Form.SIDE, Form.IDENTIFY);

  /** So many pages of a learner are tried with axe, which takes its time. */
  private static final int TRIED = 6;

  @TempDir private Path data;

  @Test
  void anInstructorFindsOutWhatTheClassBelieves() throws Exception {
    try (InProcessServer server = InProcessServer.on(data);
        Window instructor = Window.open(server.port(), Window.LAPTOP)) {
      setUp(instructor, server.useCases().setUp().code());
      makeClass(instructor);
      String classPage = instructor.path().replaceFirst("\\?.*", "");
      String code = instructor.text("p.code-shown");
      compose(instructor);

      onThePhone(server, code, "Avocet", SWAPS_THE_REGION, true);
      onThePhone(server, code, "Coot", FORGETS_THE_DIRECTION, false);
      Map<String, PlantedBelief> others = new LinkedHashMap<>();
      others.put("Fulmar", FORGETS_THE_DIRECTION);
      others.put("Gannet", SWAPS_THE_REGION);
      List.of("Brant", "Dunlin", "Eider", "Heron").forEach(each -> others.put(each, KNOWS));
      others.forEach((nickname, belief) -> byScript(server, code, nickname, belief));

      instructor.go(classPage);
      PageCheck.accessibleEverywhere(instructor);
      review(instructor, classPage);
      followUp(instructor);
    }
  }

  private static void setUp(Window window, String code) {
    window.go("/");
    PageCheck.accessibleEverywhere(window);
    window.go("/set-up");
    PageCheck.accessibleEverywhere(window);
    window.type("code", "WRONG-CODE");
    window.type("name", "Marlo");
    window.type("password", "a long walk on the pier");
    window.follow("form[action='/set-up'] button");
    assertThat(window.has(".problems")).isTrue();
    PageCheck.accessibleEverywhere(window);
    window.type("code", code);
    window.type("password", "a long walk on the pier");
    window.follow("form[action='/set-up'] button");
    assertThat(window.path()).isEqualTo("/classes");
    PageCheck.accessibleEverywhere(window);
    window.go("/nowhere");
    PageCheck.accessibleEverywhere(window);
    window.go("/classes");
  }

  private static void makeClass(Window window) {
    window.type("name", "Tuesday evening");
    window.choose("practice", "iala-a");
    window.follow("form[action='/classes'] button");
    assertThat(window.text("h1")).isEqualTo("Tuesday evening");
    PageCheck.accessibleEverywhere(window);
  }

  private static void compose(Window window) {
    window.follow("a[href$='/compose']");
    DRILLED.forEach(each -> window.choose("concept", each.id()));
    window.press("#asked-now");
    ASKED.forEach(each -> window.choose("form", each.id()));
    window.type("length", Integer.toString(LENGTH));
    window.type("title", "Before the water");
    window.follow("button[value='sample']");
    assertThat(window.has("#sample .specimen")).isTrue();
    PageCheck.accessibleEverywhere(window);
    window
        .driver()
        .findElements(By.cssSelector("details:not([open]) > summary"))
        .forEach(WebElement::click);
    PageCheck.accessibleEverywhere(window);
    window.follow("button[value='assign']");
    assertThat(window.text("main")).contains("Before the water");
    PageCheck.accessibleEverywhere(window);
  }

  private static void onThePhone(
      InProcessServer server, String code, String nickname, PlantedBelief belief, boolean scripts) {
    try (Window phone = Window.open(server.port(), Window.PHONE)) {
      if (!scripts) {
        phone.turnScriptsOff();
      }
      phone.go("/join/" + code);
      check(phone, 0);
      phone.type("nickname", nickname);
      phone.follow("form[action='/join'] button");
      check(phone, 0);
      phone.follow("main a[href='/drills']");
      check(phone, 0);
      phone.follow(".drills a");
      for (int position = 0; position < LENGTH; position++) {
        check(phone, position);
        phone.choose("option", token(server.useCases(), phone.session(), belief));
        phone.follow("form.answer button");
        phone.see("main.feedback");
        check(phone, position);
        phone.follow(".next a");
      }
      assertThat(phone.has("main.item")).isFalse();
      check(phone, 0);
      phone.follow("main a.button");
      check(phone, 0);
    }
  }

  private static void check(Window phone, int position) {
    if (position < TRIED && phone.runsScripts()) {
      PageCheck.accessible(phone);
    } else {
      PageCheck.drawn(phone);
    }
  }

  private static void byScript(
      InProcessServer server, String code, String nickname, PlantedBelief belief) {
    Browser http = new Browser(server.port());
    http.postJson("/api/join", "{\"code\":\"" + code + "\",\"nickname\":\"" + nickname + "\"}");
    String session = String.valueOf(http.cookie());
    String requestToken = server.useCases().signIn().resume(session).orElseThrow().requestToken();
    Browser signedIn = http.with("X-Request-Token", requestToken);
    for (int position = 0; position < LENGTH; position++) {
      IssuedItem item = next(server.useCases(), session);
      String body =
          """
          {"id":"%s","item":"%s","option":"%s","shownMs":2000}"""
              .formatted(UUID.randomUUID(), item.id(), token(item, belief));
      int status = signedIn.postJson("/api/responses", body).statusCode();
      while (status == 429) { // nobody answers so fast
        status = signedIn.postJson("/api/responses", body).statusCode();
      }
      assertThat(status).isEqualTo(201);
    }
  }

  private static String token(UseCases useCases, String session, PlantedBelief belief) {
    return token(next(useCases, session), belief);
  }

  /** The item that the learner has open, with what no page shows. */
  private static IssuedItem next(UseCases useCases, String session) {
    LearnerCaller learner =
        (LearnerCaller) useCases.signIn().resume(session).orElseThrow().caller();
    String drill = useCases.listAssignments().of(learner).get(0).id();
    return useCases.nextItem().next(learner, drill).orElseThrow();
  }

  private static String token(IssuedItem item, PlantedBelief belief) {
    String value = belief.answer(item.item());
    return item.options().stream()
        .filter(each -> each.option().value().equals(value))
        .map(OpaqueOption::token)
        .findFirst()
        .orElseThrow();
  }

  private static void review(Window window, String classPage) {
    window.follow("a[href='" + classPage + "/review']");
    assertThat(texts(window, ".concept-row .concept-name"))
        .hasSize(3)
        .startsWith(WORDS.name(Concept.LATERAL_SIDE));
    assertThat(texts(window, ".concept-row .concept-verdict strong"))
        .containsExactly("Weak", "Sound", "Sound");
    Map<String, String> believes = new LinkedHashMap<>();
    for (WebElement row : window.driver().findElements(By.cssSelector("table.people tbody tr"))) {
      List<WebElement> cells = row.findElements(By.cssSelector("th, td"));
      assertThat(cells.get(1).getText()).isEqualTo(WORDS.name(Concept.LATERAL_SIDE));
      believes.put(cells.get(0).getText(), cells.get(2).getText());
    }
    String swapped = WORDS.name(Misconception.REGION_SWAPPED);
    String ignored = WORDS.name(Misconception.DIRECTION_IGNORED);
    assertThat(believes)
        .containsOnly(
            Map.entry("Avocet", swapped),
            Map.entry("Coot", ignored),
            Map.entry("Fulmar", ignored),
            Map.entry("Gannet", swapped));
    window.driver().findElements(By.cssSelector("summary")).forEach(WebElement::click);
    PageCheck.accessibleEverywhere(window);
  }

  private static List<String> texts(Window window, String selector) {
    return window.driver().findElements(By.cssSelector(selector)).stream()
        .map(WebElement::getText)
        .toList();
  }

  private static void followUp(Window window) {
    window.follow("#lateral-side a[href*='follow-up']");
    assertThat(window.see("input[name='concept'][value='lateral-side']").isSelected()).isTrue();
    assertThat(window.has("#sample .specimen")).isTrue();
    PageCheck.accessibleEverywhere(window);
    window.follow("button[value='assign']");
    assertThat(window.driver().findElements(By.cssSelector(".assigned"))).hasSize(2);
  }
}
