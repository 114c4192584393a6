package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Courses as an instructor makes, plans and repeats them. */
class CoursePagesTest {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

  @TempDir private Path folder;
  private final LocalDate practical = LocalDate.now(ZoneOffset.UTC).plusDays(40);
  private OpenServer server;
  private Visitor jo;
  private String tuesday;

  @BeforeEach
  void start() throws BindException {
    server = OpenServer.on(folder);
    jo = server.instructor();
    jo.send("main form", "name", "Tuesday", "practice", "iala-a");
    tuesday = path();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private String path() {
    return jo.path().replaceFirst("\\?.*", "");
  }

  private String course(String... more) {
    jo.get("/courses");
    String[] typed = {"name", "Spring", "practical", practical.toString()};
    jo.send(
        "main form",
        java.util.stream.Stream.of(typed, more)
            .flatMap(java.util.Arrays::stream)
            .toArray(String[]::new));
    String course = path();
    jo.send("#classes", "class", tuesday.substring("/classes/".length()));
    return course;
  }

  @Test
  void aPlanBeginsWithDayAndWaterOfTheCourse() {
    course("water", "home-water");
    assertThat(jo.one(".lead").text()).contains("The Skarrow");
    jo.get(tuesday + "/plan");
    assertThat(jo.one("#practical").val()).isEqualTo(practical.toString());
    assertThat(jo.one("#water option[selected]").val()).isEqualTo("home-water");
    assertThat(jo.page().select("#sessions .assigned")).isNotEmpty();
  }

  @Test
  void whatIsKeptStaysAndTurnsIntoDrills() {
    String course = course();
    jo.get(tuesday + "/plan");
    List<String> proposed = jo.page().select("#sessions .assigned h2").eachText();
    jo.send("#keep");
    assertThat(path()).isEqualTo(course);
    assertThat(jo.page().select("h3").eachText()).containsAll(proposed);
    jo.get(tuesday + "/plan");
    assertThat(jo.page().select("#keep")).isEmpty();
    assertThat(jo.page().select("#sessions .assigned h2").eachText()).isEqualTo(proposed);
    jo.send("#sessions .assigned form", "do", "assign");
    assertThat(jo.path()).startsWith(tuesday + "?assigned=");
  }

  @Test
  void aDrillSetTakesThePlaceOfWhatIsPlannedForADay() {
    String course = course();
    jo.get(tuesday + "/plan");
    jo.send("#keep");
    jo.send("form[action$=days/1]", "set", "by-night");
    assertThat(jo.page().select(".assigned").get(1).text()).contains("By night");
    assertThat(jo.page().select("#set-1 option[selected]").val()).isEqualTo("by-night");
    jo.get(tuesday + "/plan");
    Element day = jo.page().select("#sessions .assigned").get(1);
    assertThat(day.text()).contains("By night", "of your choice");
    jo.send("form[action$=plan/1]");
    assertThat(jo.path()).startsWith(tuesday + "?assigned=");
    assertThat(jo.one(".assigned h3").text()).startsWith("By night");
    jo.get(course);
    jo.send("form[action$=days/1]", "set", "");
    assertThat(jo.page().select(".assigned").get(1).text()).doesNotStartWith("By night");
    assertThat(jo.page().select("#set-1 option[selected]").val()).isEmpty();
  }

  @Test
  void runAgainTheDaysMoveWithThePractical() {
    String course = course();
    jo.get(tuesday + "/plan");
    jo.send("#keep");
    int days = jo.page().select(".assigned").size();
    jo.send("#again", "againName", "Spring again", "againPractical", "");
    assertThat(jo.status()).isEqualTo(422);
    assertThat(jo.one("#againName").val()).isEqualTo("Spring again");
    LocalDate next = practical.plusDays(364);
    jo.send("#again", "againPractical", next.toString());
    assertThat(path()).isNotEqualTo(course);
    assertThat(jo.page().select(".assigned")).hasSize(days);
    assertThat(jo.page().select(".assigned h3").last().text())
        .startsWith(DAY.format(next.minusDays(1)));
    assertThat(jo.page().select("#classes input[checked]")).isEmpty();
  }

  @Test
  void whatIsUnfitIsSaidByItsFieldAndKept() {
    jo.get("/courses");
    jo.send("main form", "name", "Spring", "practical", "someday", "water", "home-water");
    assertThat(jo.status()).isEqualTo(422);
    assertThat(jo.one("#practical-problem").text()).contains("Choose the day");
    assertThat(jo.one("#name").val()).isEqualTo("Spring");
    assertThat(jo.one("input[name=water]").hasAttr("checked")).isTrue();
    jo.send("main form", "name", "", "practical", practical.toString());
    assertThat(jo.one("#name-problem").text()).contains("1 to 60");
  }

  @Test
  void deletedItLeavesItsClass() {
    String course = course();
    jo.get(course);
    jo.send("#delete");
    assertThat(jo.path()).startsWith("/courses?deleted");
    jo.get(course);
    assertThat(jo.status()).isEqualTo(404);
    jo.get(tuesday + "/plan");
    assertThat(jo.status()).isEqualTo(200);
    assertThat(jo.one("#practical").val()).isEmpty();
  }

  @Test
  void aPastPracticalIsNoMistakeOfWhoOpensThePlan() {
    jo.get("/courses");
    jo.send("main form", "name", "Last year", "practical", "2020-06-06");
    jo.send("#classes", "class", tuesday.substring("/classes/".length()));
    jo.get(tuesday + "/plan");
    assertThat(jo.status()).isEqualTo(200);
    assertThat(jo.page().select("#sessions .assigned")).isEmpty();
  }
}
