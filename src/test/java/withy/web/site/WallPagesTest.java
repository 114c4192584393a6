package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.BindException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The wall with pages alone, without a script. */
class WallPagesTest {
  private static final String RIVER = "/wall?water=river-3";

  @TempDir private static Path folder;
  private static OpenServer server;

  @BeforeAll
  static void open() throws BindException {
    server = OpenServer.on(folder);
    server.firstInstructor();
  }

  @AfterAll
  static void close() {
    server.close();
  }

  private static Visitor wall(String address) {
    Visitor instructor = server.instructor();
    instructor.get(address);
    return instructor;
  }

  private static String order(Visitor visitor) {
    return visitor.one("#call .order").text();
  }

  private static List<String> orders(Visitor visitor) throws IOException {
    JsonNode voyage = new ObjectMapper().readTree(visitor.one("#water").attr("data-voyage"));
    return StreamSupport.stream(voyage.get("steps").spliterator(), false)
        .map(each -> each.get(1).textValue() + " / " + each.get(2).textValue())
        .toList();
  }

  @Test
  void stepsTheBoatFromMarkToMarkByLinks() {
    Visitor visitor = wall(RIVER);
    assertThat(visitor.one("#call .called").text()).isEqualTo("In from the sea");
    visitor.follow("#on");
    assertThat(visitor.one("#call .called").text()).contains("mark");
    assertThat(order(visitor)).startsWith("Leave to ");
    String first = visitor.one("#call").text();
    String boat = visitor.one(".boat").attr("transform");
    visitor.follow("#on");
    assertThat(visitor.one(".boat").attr("transform")).isNotEqualTo(boat);
    visitor.follow("#back");
    assertThat(visitor.one("#call").text()).isEqualTo(first);
    assertThat(visitor.one(".boat").attr("transform")).isEqualTo(boat);
    assertThat(visitor.one("#heading").text()).matches("[0-3][0-9]{2}°");
    assertThat(visitor.one("#least").text()).matches("[0-9]+(\\.[0-9])? m");
  }

  @Test
  void leavesEveryMarkOnTheOtherSideOutbound() throws IOException {
    List<String> in = orders(wall(RIVER));
    List<String> out = orders(wall(RIVER + "&way=out"));
    assertThat(out).hasSameSizeAs(in);
    for (String each : in.subList(1, in.size() - 1)) {
      String swapped =
          each.contains("to starboard")
              ? each.replace("to starboard", "to port")
              : each.replace("to port", "to starboard");
      assertThat(out).contains(swapped);
    }
  }

  @Test
  void dressesTheSameWaterForTheOtherRegion() {
    Visitor visitor = wall(RIVER + "&step=2");
    String before = visitor.one("#call .called").text();
    String kept = order(visitor);
    visitor.follow(".choices a:contains(Region B)");
    assertThat(visitor.one(".choices a[aria-current]").text()).isEqualTo("Region B");
    assertThat(order(visitor)).as("the hand stays").isEqualTo(kept);
    assertThat(visitor.one("#call .called").text())
        .contains(before.contains("red") ? "green" : "red");
  }

  @Test
  void callsTheLightsAtNightAndNoColoursOfBodies() throws IOException {
    Visitor visitor = wall(RIVER + "&time=night");
    assertThat(visitor.page().select("main.night")).hasSize(1);
    List<String> said = orders(visitor);
    assertThat(said.subList(1, said.size() - 1))
        .allMatch(each -> each.contains("light ") || each.contains("unlit"))
        .noneMatch(each -> each.contains("red") || each.contains("green"));
    assertThat(visitor.page().select("#water animate")).isNotEmpty();
  }

  @Test
  void takesAMarkAwayAsksAndTells() throws IOException {
    Visitor visitor = wall(RIVER);
    String taken = visitor.one(".links.keep li:first-child a").text();
    int marks = visitor.page().select(".links.keep li").size();
    assertThat(orders(visitor)).filteredOn(each -> each.startsWith(taken)).hasSize(1);
    visitor.follow(".links.keep li:first-child a");
    assertThat(visitor.one(".away .called").text()).startsWith("What stood here");
    assertThat(orders(visitor)).noneMatch(each -> each.startsWith(taken));
    assertThat(orders(visitor)).anyMatch(each -> each.startsWith("A mark is missing"));
    assertThat(visitor.page().select("#water text:matchesOwn(^\\?$)")).hasSize(1);
    visitor.follow(".away .button");
    assertThat(visitor.one(".away .called").text()).startsWith(taken);
    assertThat(visitor.one(".away .order").text()).startsWith("Leave to ");
    visitor.follow(".away a");
    assertThat(visitor.page().select(".away")).isEmpty();
    assertThat(visitor.page().select(".links.keep li")).hasSize(marks);
  }

  @Test
  void tellsWhatAPlaceIs() {
    Visitor visitor = wall("/wall?water=isolated-rock-1&at=20,20");
    assertThat(visitor.one("#looked").text()).matches("[0-9.]+ m of water here\\.");
    assertThat(visitor.one(".cross").attr("visibility")).isEqualTo("visible");
    assertThat(wall("/wall?at=99999,1").one("#looked").text()).isEqualTo("Off the chart.");
    Visitor refused = wall("/wall/place?at=nowhere");
    assertThat(refused.status()).isEqualTo(404);
  }

  @Test
  void showsEveryKindOfWater() {
    Visitor visitor = wall("/wall");
    List<String> kinds = visitor.page().select(".links:not(.keep) a").eachAttr("href");
    assertThat(kinds).as("the home water and eight kinds").hasSize(9);
    for (String each : kinds) {
      visitor.get(each);
      assertThat(visitor.status()).isEqualTo(200);
      assertThat(visitor.page().select("#water > svg")).hasSize(2);
    }
    assertThat(wall("/wall?water=no-such-9").status()).isEqualTo(404);
  }

  /** An instructor whose class is in the room, at the first mark of a river, with two learners. */
  private static List<Visitor> room() {
    Visitor instructor = server.instructor();
    instructor.get("/classes");
    instructor.send("main form", "name", "In the room", "practice", "iala-a");
    String code = instructor.one(".code-shown").text();
    List<Visitor> people = new ArrayList<>(List.of(instructor));
    for (String name : List.of("Mira", "Odo")) {
      Visitor learner = server.visitor();
      learner.get("/join/" + code);
      learner.send("form[action=/join]", "nickname", name);
      people.add(learner);
    }
    instructor.follow("a[href^=/wall]");
    String schoolClass = instructor.one("#class option[selected]").attr("value");
    instructor.get(RIVER + "&step=2&class=" + schoolClass);
    instructor.send("#ask form", "class", schoolClass, "question", "next-mark");
    return people;
  }

  @Test
  void putsAnItemToTheRoomAndShowsTheAnswersAsTracksWithoutNames() {
    List<Visitor> people = room();
    Visitor instructor = people.get(0);
    assertThat(instructor.one("#count").text()).isEqualTo("0 of 2 have answered");
    assertThat(instructor.page().select(".tally")).isEmpty();
    int before = instructor.one("#main svg").text().length();
    for (Visitor learner : people.subList(1, 3)) {
      learner.get("/drills");
      learner.follow(".on-wall a");
      List<String> options = learner.page().select(".options input").eachAttr("value");
      learner.send("form.answer", "option", options.get(people.indexOf(learner) - 1));
      assertThat(learner.one("h1").text()).containsAnyOf("Right", "Not this time");
      learner.get("/drills");
      assertThat(learner.page().select(".on-wall")).isEmpty();
    }
    instructor.follow("#again");
    assertThat(instructor.one("#count").text()).isEqualTo("2 of 2 have answered");
    instructor.send("form.doing");
    assertThat(instructor.page().select(".tally dd").eachText()).containsExactly("1", "1", "0");
    assertThat(instructor.page().select(".tally .key")).hasSize(1);
    assertThat(instructor.one("#main svg").text().length()).isNotEqualTo(before);
    assertThat(instructor.one("#main").text()).doesNotContain("Mira", "Odo");
    assertThat(instructor.page().select("#main svg + svg text").eachText()).contains("1");
    instructor.get(instructor.one("#main p a").attr("href"));
    assertThat(instructor.path()).startsWith("/wall?water=river-3");
  }

  @Test
  void keepsTheAnswerFromTheRoomUntilItIsShown() {
    Visitor instructor = room().get(0);
    String page = instructor.one("#main").html();
    assertThat(page).doesNotContain("region-swapped", "key", "right");
    assertThat(instructor.page().select("#main svg text:matchesOwn(^[0-9]$)"))
        .as("no count of answers, no soundings")
        .hasSizeLessThan(20);
  }

  @Test
  void namesTheMarkThatIsAskedAboutBeforeItIsPut() {
    Visitor instructor = room().get(0);
    String schoolClass = instructor.path().replaceFirst(".*class=", "");
    for (int step = 1; step < 6; step++) {
      instructor.get(RIVER + "&step=" + step + "&class=" + schoolClass);
      String named = instructor.one("#question option[value=next-mark]").text();
      String called = instructor.one("#call .called").text();
      String mark = named.replaceFirst(".*: ", "");
      assertThat(called.toLowerCase(Locale.ROOT).startsWith(mark.toLowerCase(Locale.ROOT) + ":"))
          .as(called + " / " + named)
          .isEqualTo(named.startsWith("Side of the next mark: "));
      instructor.send("#ask form", "class", schoolClass, "question", "next-mark");
      Visitor learner = server.visitor();
      instructor.get("/classes/" + schoolClass);
      learner.get("/join/" + instructor.one(".code-shown").text());
      learner.send("form[action=/join]", "nickname", "Learner " + step);
      learner.get("/drills");
      assertThat(learner.one("#main").text())
          .as(named)
          .containsPattern("mark " + mark.replaceFirst(".* ", "") + "\\b");
    }
  }

  @Test
  void keepsAnAnswerThatComesAfterItWasShown() {
    List<Visitor> people = room();
    Visitor early = people.get(1);
    early.get("/drills");
    early.follow(".on-wall a");
    people.get(0).send("form.doing");
    early.answer();
    assertThat(early.status()).isEqualTo(200);
    assertThat(early.one("h1").text()).containsAnyOf("Right", "Not this time");
    people.get(0).get(people.get(0).path());
    assertThat(people.get(0).one("#main").text()).contains("1 of 2 have answered");
  }

  @Test
  void tellsWhoeverComesTooLateThatTheItemIsClosed() {
    List<Visitor> people = room();
    Visitor late = people.get(2);
    late.get("/drills");
    String item = late.one(".on-wall a").attr("href");
    people.get(0).send("form.doing");
    late.get(item);
    assertThat(late.status()).isEqualTo(200);
    assertThat(late.one("h1").text()).isEqualTo("This item is closed");
    late.follow(".next a");
    assertThat(late.page().select(".on-wall")).isEmpty();
    Visitor stranger = room().get(1);
    stranger.get(item);
    assertThat(stranger.status()).as("in another class").isEqualTo(404);
  }

  @Test
  void saysWhatToMendWhereNothingCanBePut() {
    Visitor instructor = room().get(0);
    instructor.get(RIVER);
    instructor.send("#ask form", "class", "none", "question", "next-mark");
    assertThat(instructor.status()).isEqualTo(422);
    assertThat(instructor.one(".problems a").attr("href")).isEqualTo("#class");
    String schoolClass = instructor.one("#class option").attr("value");
    instructor.send("#ask form", "class", schoolClass, "question", "no such");
    assertThat(instructor.one(".problems a").text()).isEqualTo("Choose what to ask");
  }

  @Test
  void speaksToInstructorsAlone() {
    Visitor nobody = server.visitor();
    nobody.get("/wall");
    assertThat(nobody.path()).isEqualTo("/sign-in");
  }
}
