package withy.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;
import withy.core.mark.PracticeNote;
import withy.wording.Wording;

/** The reference, for anybody who comes, without scripts. */
class MarkPagesTest {
  @TempDir private static Path folder;
  private static OpenServer server;

  @BeforeAll
  static void start() throws BindException {
    server = OpenServer.on(folder);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void leadsFromThePracticesToEveryMarkOfEach() {
    Visitor anybody = server.visitor();
    List<String> practices = anybody.get("/marks").select(".practices a").eachAttr("href");
    assertThat(practices).hasSameSizeAs(Practice.values());
    for (Practice practice : Practice.values()) {
      Document page = anybody.get("/marks/" + practice.id());
      List<String> marks = page.select(".cards a").eachAttr("href");
      assertThat(marks)
          .containsExactlyInAnyOrderElementsOf(
              practice.marks().stream()
                  .map(each -> "/marks/" + practice.id() + "/" + each.id())
                  .toList());
      assertThat(page.select(".caution").text()).contains("not for navigation");
    }
  }

  @Test
  void saysBesideTheMarksWhatNoneOfThemShows() {
    Visitor anybody = server.visitor();
    for (Practice practice : Practice.values()) {
      String page = anybody.get("/marks/" + practice.id()).select("main").text();
      for (PracticeNote each : practice.notes()) {
        assertThat(page).contains(Wording.of(Locale.ENGLISH).text(each.messageKey()));
        each.sources().forEach(source -> assertThat(page).contains(source.section()));
      }
    }
    assertThat(anybody.get("/marks/usa").text()).contains("racon", "33 CFR 62");
  }

  @Test
  void saysOfEveryMarkWhatItMeansAsksAndWhereItIsLaidDown() {
    Visitor anybody = server.visitor();
    for (Practice practice : Practice.values()) {
      for (MarkDescription each : practice.marks()) {
        Document page = anybody.get("/marks/" + practice.id() + "/" + each.id());
        assertThat(anybody.status()).as(each.id()).isEqualTo(200);
        assertThat(page.select("figure svg[role=img]")).as(each.id()).hasSize(1);
        assertThat(page.select(".meaning").text()).as(each.id()).endsWith(".");
        assertThat(page.select(".facts-list dt").size()).as(each.id()).isGreaterThan(4);
        assertThat(page.select(".sources li")).as(each.id()).hasSameSizeAs(each.clauses());
        assertThat(page.select(".sources strong"))
            .as(each.id())
            .hasSize((int) each.clauses().stream().filter(clause -> clause.fromMemory()).count());
        assertThat(page.select(".strip-cards li")).hasSameSizeAs(each.look().lights());
      }
    }
  }

  @Test
  void goesThroughAllMarksOfAPracticeFromOneToTheNext() {
    Visitor anybody = server.visitor();
    List<String> met = new ArrayList<>();
    Document page = anybody.get("/marks/usa/port-hand?time=afar&wall=on");
    while (!page.select("a[rel=next]").isEmpty()) {
      met.add(anybody.path());
      page = anybody.follow("a[rel=next]");
    }
    assertThat(met).hasSize(Practice.USA.marks().size() - 1).doesNotHaveDuplicates();
    assertThat(met).allMatch(path -> path.endsWith("?time=afar&wall=on"));
  }

  @Test
  void swapsDayAndNightAtOnePress() {
    Visitor anybody = server.visitor();
    Document day = anybody.get("/marks/iala-a");
    assertThat(day.select("animate")).isEmpty();
    Document night = anybody.follow(".choices a[href$=night]");
    assertThat(anybody.path()).isEqualTo("/marks/iala-a?time=night");
    assertThat(night.select(".by-light animate")).isNotEmpty();
    assertThat(night.select(".choices [aria-current]").eachText()).contains("Night");
    Document still = anybody.follow(".switches a[href*=still]");
    assertThat(still.select("main.still")).hasSize(1);
    anybody.follow(".choices a[href=\"/marks/iala-a?light=still\"]");
    assertThat(anybody.status()).isEqualTo(200);
  }

  @Test
  void showsSheetingInTheBeamOfATorch() {
    Visitor anybody = server.visitor();
    String day = anybody.get("/marks/iala-a/north-cardinal").select("figure svg").outerHtml();
    Document torch = anybody.get("/marks/iala-a/north-cardinal?torch=on");
    assertThat(torch.select("figure svg").outerHtml()).isNotEqualTo(day);
    assertThat(torch.select(".facts-list").text()).contains("blue band, yellow band");
    assertThat(anybody.get("/marks/iala-a/emergency-wreck?torch=on").select("figcaption").text())
        .contains("Nothing is known");
  }

  @Test
  void tellsHowLearnersConfuseAMark() {
    Document page = server.visitor().get("/marks/iala-b/north-cardinal");
    assertThat(page.select(".beliefs div").eachText())
        .anyMatch(text -> text.contains("cones") && text.contains("south cardinal mark"))
        .anyMatch(text -> text.endsWith("Passes south of it"));
    assertThat(server.visitor().get("/marks/iala-b/port-hand").select(".beliefs").text())
        .contains("Leaves it to port when travelling against the buoyage");
  }

  @Test
  void setsTheRegionsSideBySide() {
    Document page = server.visitor().get("/regions");
    assertThat(page.select(".two-regions section")).hasSize(2);
    assertThat(page.select(".two-regions section:first-child a").eachAttr("href"))
        .hasSize(4)
        .allMatch(path -> path.startsWith("/marks/iala-a/"));
    assertThat(page.select(".two-regions section:last-child a").eachAttr("href"))
        .hasSize(4)
        .allMatch(path -> path.startsWith("/marks/iala-b/"));
  }

  @Test
  void putsEveryMarkAndTheCautionOnThePoster() {
    Document page = server.visitor().get("/marks/canada/poster?time=night");
    assertThat(page.select(".sheet .cards li")).hasSameSizeAs(Practice.CANADA.marks());
    assertThat(page.select(".sheet .sheet-foot").text()).contains("not for navigation");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/marks/atlantis", "/marks/atlantis/poster", "/marks/usa/north-cardinal"})
  void offersThePracticesInPlaceOfWhatDoesNotExist(String path) {
    Visitor anybody = server.visitor();
    Document page = anybody.get(path);
    assertThat(anybody.status()).isEqualTo(404);
    assertThat(page.expectFirst("h1").text()).isEqualTo("No such marks");
    assertThat(page.select(".practices a")).hasSameSizeAs(Practice.values());
  }

  @Test
  void leadsThereFromTheEntryAndFromTheInstructorsPages() {
    assertThat(server.visitor().get("/").select("a[href=/marks]")).hasSize(1);
    assertThat(server.instructor().get("/classes").select("a[href=/marks]")).hasSize(1);
  }
}
