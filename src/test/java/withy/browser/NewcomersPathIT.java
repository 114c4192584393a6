package withy.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import withy.InProcessServer;

/**
 * The shortest ways of somebody who starts with nothing: from an empty data folder to a class that
 * answers, and from answers to a follow-up that is assigned. Presses that lead on are counted,
 * since they are what a newcomer spends; typing a name or choosing a dot is none.
 */
class NewcomersPathIT {
  private static final int LEARNERS = 3;
  private static final int ANSWERS = 16;

  @TempDir private Path data;

  /** A window whose presses are counted. */
  private record Counted(Window window, int[] presses) {
    static Counted of(Window window) {
      return new Counted(window, new int[1]);
    }

    void press(String selector) {
      window.follow(selector);
      presses[0]++;
    }

    int count() {
      return presses[0];
    }
  }

  @Test
  void fromAnEmptyFolderToAnAnswerAndFromAnswersToAFollowUp() throws Exception {
    Instant started = Instant.now();
    try (InProcessServer server = InProcessServer.on(data);
        Window laptop = Window.open(server.port(), Window.LAPTOP);
        Window phone = Window.open(server.port(), Window.PHONE)) {
      Counted instructor = Counted.of(laptop);
      Counted learner = Counted.of(phone);
      makeClassWithDrill(instructor, server.useCases().setUp().code());
      String classPage = laptop.path().replaceFirst("\\?.*", "");
      String joinPath = laptop.see(".join-link a").getDomAttribute("href");
      joinAndAnswer(learner, String.valueOf(joinPath), "Avocet");
      say("from an empty folder to the first answer", started, instructor, learner);
      assertThat(instructor.count()).isEqualTo(3);
      assertThat(learner.count()).isEqualTo(3);

      goOn(phone, ANSWERS - 1);
      for (int other = 1; other < LEARNERS; other++) {
        phone.driver().manage().deleteAllCookies();
        joinAndAnswer(learner, String.valueOf(joinPath), "Bittern " + other);
        goOn(phone, ANSWERS - 1);
      }
      Instant answered = Instant.now();
      Counted again = Counted.of(laptop);
      followUp(again, classPage);
      say("from answers to an assigned follow-up", answered, again, Counted.of(phone));
      assertThat(again.count()).isEqualTo(2);
    }
  }

  private static void makeClassWithDrill(Counted instructor, String code) {
    Window window = instructor.window();
    window.go("/set-up?code=" + code); // as the server prints it
    window.type("name", "Marlo");
    window.type("password", "a long walk on the pier");
    instructor.press("form[action='/set-up'] button");
    window.type("name", "Tuesday evening");
    window.choose("practice", "iala-a");
    instructor.press("form[action='/classes'] button");
    instructor.press("form[action*='/assign/'] button");
  }

  private static void joinAndAnswer(Counted learner, String joinPath, String nickname) {
    Window window = learner.window();
    window.go(joinPath); // out of the code that the phone's camera reads
    window.type("nickname", nickname);
    learner.press("form[action='/join'] button");
    learner.press("main .next a.button:not(.second)");
    choose(window);
    learner.press("form.answer button");
    window.see("main.feedback");
  }

  private static void goOn(Window window, int items) {
    for (int i = 0; i < items; i++) {
      window.follow(".next a");
      choose(window);
      window.follow("form.answer button");
    }
  }

  /** The last option but "not sure", so that something is wrong in the end. */
  private static void choose(Window window) {
    List<WebElement> options =
        window.driver().findElements(By.cssSelector("label:has(input[name='option'])"));
    options.get(Math.max(0, options.size() - 2)).click();
  }

  private static void followUp(Counted instructor, String classPage) {
    Window window = instructor.window();
    window.go(classPage);
    instructor.press("a[href='" + classPage + "/review']");
    instructor.press("form[action$='/follow-up'] button");
    window.go(classPage);
    assertThat(window.driver().findElements(By.cssSelector(".assigned"))).hasSize(2);
  }

  private static void say(String what, Instant since, Counted instructor, Counted learner) {
    System.out.printf(
        "%s: %.1f s, %d presses of the instructor, %d of the learner%n",
        what,
        Duration.between(since, Instant.now()).toMillis() / 1000.0,
        instructor.count(),
        learner.count());
  }
}
