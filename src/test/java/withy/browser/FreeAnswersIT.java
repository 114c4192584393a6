package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.BindException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import withy.InProcessServer;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.fixture.FreeItems;
import withy.usecase.InstructorCaller;
import withy.usecase.ItemSource;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;

/** Items without options on a phone, with scripts and without. */
class FreeAnswersIT {
  private static final String PASSWORD = "a long walk on the pier";

  @TempDir private Path folder;

  /** What happens on a phone at the first item of a drill. */
  private interface Story {
    void told(Window phone);
  }

  private void tell(ItemSource source, boolean scripts, Story story) throws BindException {
    try (InProcessServer server = InProcessServer.on(folder, source);
        Window phone = Window.open(server.port(), Window.PHONE)) {
      if (!scripts) {
        phone.turnScriptsOff();
      }
      phone.go("/join/" + classWithDrill(server.useCases()));
      phone.type("nickname", "Tern");
      phone.follow("form[action='/join'] button");
      phone.go("/drills");
      phone.follow(".drills a");
      story.told(phone);
    }
  }

  private static String classWithDrill(UseCases cases) {
    cases.setUp().setUp(cases.setUp().code(), "Marlo", PASSWORD);
    var marlo = (InstructorCaller) cases.signIn().signIn("Marlo", PASSWORD).caller();
    SchoolClass opened = cases.openClass().open(marlo, "Tuesday", Practice.IALA_A);
    Composition sides = new Composition(List.of(Concept.LATERAL_SIDE), List.of(), null, 3);
    cases.assignDrill().assign(marlo, opened.id(), "Ranges", sides, null);
    return opened.code();
  }

  /** What reads the page is a script itself. */
  private static void check(Window phone) {
    if (phone.runsScripts()) {
      PageCheck.accessibleEverywhere(phone);
      phone.resize(Window.PHONE);
    } else {
      PageCheck.drawn(phone);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aNumberIsTypedMendedAndAnswered(boolean scripts) throws BindException {
    tell(
        FreeItems::number,
        scripts,
        phone -> {
          check(phone);
          phone.type("number", "far");
          phone.follow("form.answer button");
          assertThat(phone.text("#number-problem"))
              .isEqualTo("Type one number, such as 12.5 or 12,5");
          assertThat(phone.see("#number").getDomProperty("value")).isEqualTo("far");
          check(phone);
          phone.type("number", "19,1");
          phone.follow("form.answer button");
          assertThat(phone.text("h1")).contains("Right");
          check(phone);
        });
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aMarkIsPutTogether(boolean scripts) throws BindException {
    tell(
        FreeItems::assembly,
        scripts,
        phone -> {
          check(phone);
          phone.press(".slot:first-of-type .row");
          phone.follow("form.answer button");
          assertThat(phone.driver().findElements(By.cssSelector(".slot.refused"))).hasSize(3);
          for (WebElement slot : phone.driver().findElements(By.cssSelector(".slot"))) {
            slot.findElement(By.cssSelector(".row")).click();
          }
          phone.follow("form.answer button");
          assertThat(phone.text(".parts")).contains("Body shape", "Light");
          check(phone);
        });
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aPassageIsAnsweredMarkByMark(boolean scripts) throws BindException {
    tell(
        FreeItems::passage,
        scripts,
        phone -> {
          check(phone);
          phone.press(".slot:first-of-type .row");
          phone.follow("form.answer button");
          assertThat(phone.driver().findElements(By.cssSelector(".slot.refused")))
              .hasSizeBetween(2, 5);
          check(phone);
          for (WebElement slot : phone.driver().findElements(By.cssSelector(".slot"))) {
            slot.findElement(By.cssSelector(".row")).click();
          }
          phone.follow("form.answer button");
          assertThat(phone.text(".parts")).contains("Mark 1", "Mark 3");
          check(phone);
        });
  }

  @Test
  void rowsAreLargeEnoughForAThumb() throws BindException {
    tell(
        FreeItems::assembly,
        true,
        phone ->
            assertThat(phone.driver().findElements(By.cssSelector(".row")))
                .allSatisfy(row -> assertThat(row.getSize().height).isGreaterThanOrEqualTo(48)));
  }
}
