package withy.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.ClubServer;

class StoppingTest {
  @Test
  void finishesARequestThatItHasBegun() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    AtomicBoolean interrupted = new AtomicBoolean();
    Route slow =
        Route.get("/api/slow", Role.ANYONE, visit -> work(visit, begun, goOn, interrupted));
    Server server = ProbeServer.start(slow);
    Browser browser = new Browser(server.port());
    CompletableFuture<HttpResponse<String>> answer =
        CompletableFuture.supplyAsync(() -> browser.get("/api/slow"));
    assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
    CompletableFuture<Void> stopped = CompletableFuture.runAsync(server::stop);
    Thread.sleep(300); // the stop is under way
    assertThat(stopped).isNotDone();
    goOn.countDown();
    assertThat(answer.get(10, TimeUnit.SECONDS).statusCode()).isEqualTo(200);
    stopped.get(20, TimeUnit.SECONDS);
    assertThat(interrupted).isFalse();
  }

  private static void work(
      Visit visit, CountDownLatch begun, CountDownLatch goOn, AtomicBoolean interrupted) {
    begun.countDown();
    try {
      goOn.await();
    } catch (InterruptedException e) {
      interrupted.set(true);
    }
    visit.context().result("done");
  }

  @Test
  void saysThatItIsClosingOrThatTheDatabaseIsSilent() {
    AtomicBoolean answers = new AtomicBoolean(true);
    Health health = new Health(answers::get);
    assertThat(health.isGood()).isTrue();
    answers.set(false);
    assertThat(health.isGood()).isFalse();
    answers.set(true);
    health.close();
    assertThat(health.isGood()).isFalse();
  }

  @Test
  void keepsSessionsOverARestart(@TempDir Path folder) {
    String learner;
    String instructor;
    try (ClubServer club = ClubServer.in(folder)) {
      Browser marlo = club.instructor();
      String code = ClubServer.schoolClass(marlo, "iala-a").get("code").textValue();
      instructor = marlo.cookie();
      learner = club.learner(code, "Tern").cookie();
    }
    try (ClubServer club = ClubServer.in(folder)) {
      Browser back = ClubServer.withToken(club.nobody().withCookie(learner));
      assertThat(back.get("/api/assignments").statusCode()).isEqualTo(200);
      Browser marlo = ClubServer.withToken(club.nobody().withCookie(instructor));
      assertThat(ClubServer.schoolClass(marlo, "usa").get("id").textValue()).isNotBlank();
    }
  }
}
