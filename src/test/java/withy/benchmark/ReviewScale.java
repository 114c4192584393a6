package withy.benchmark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import withy.InProcessServer;
import withy.store.Store;
import withy.usecase.IssuedItem;
import withy.usecase.LearnerCaller;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.usecase.UseCases;
import withy.web.Browser;

/**
 * How long an instructor waits for the review of a class, by how much its learners answered, and
 * for the list of classes of a school with a million responses: whole pages over HTTP, medians.
 */
public final class ReviewScale {
  /** With the newcomer whose answers renew the review, as many as a class may have: 60. */
  private static final int LEARNERS = 59;

  private static final int CALLS = 15;

  private final Browser browser;
  private final UseCases useCases;

  private ReviewScale(Browser browser, UseCases useCases) {
    this.browser = browser;
    this.useCases = useCases;
  }

  /**
   * @param args answers of each learner of each class; 17, 2000 and enough others for a million
   *     responses unless given
   */
  public static void main(String[] args) throws Exception {
    List<Integer> answers =
        args.length == 0 ? usual() : List.of(args).stream().map(Integer::valueOf).toList();
    Path data = Files.createTempDirectory("withy-scale");
    List<SchoolClass> classes = fill(data, answers);
    try (InProcessServer server = InProcessServer.on(data)) {
      Browser browser = new Browser(server.port());
      browser.postJson(
          "/api/sign-in", "{\"name\":\"Marlo\",\"password\":\"" + School.PASSWORD + "\"}");
      new ReviewScale(browser, server.useCases()).print(classes, answers);
    }
  }

  private static List<Integer> usual() {
    return Stream.concat(Stream.of(17, 2000), Collections.nCopies(7, 2095).stream()).toList();
  }

  private static List<SchoolClass> fill(Path data, List<Integer> answers) throws Exception {
    try (Store store = Store.open(data, Clock.systemUTC())) {
      BigSchool school = BigSchool.over(School.over(store.ports(), 3));
      String url = "jdbc:h2:async:" + data.resolve("withy");
      for (int each : answers) {
        school.addClass(url, LEARNERS, each);
      }
      return List.copyOf(school.classes());
    }
  }

  private void print(List<SchoolClass> classes, List<Integer> answers) {
    long all = answers.stream().mapToLong(each -> (long) each * LEARNERS).sum();
    System.out.printf("list of classes, %d responses: %.1f ms%n", all, millis("/classes"));
    double few = 0;
    for (int i = 0; i < Math.min(2, classes.size()); i++) {
      String page = "/classes/" + classes.get(i).id() + "/review";
      long start = System.nanoTime();
      read(page);
      double first = (System.nanoTime() - start) / 1e6;
      double median = millis(page);
      double renewed = renewed(classes.get(i), page);
      System.out.printf(
          "review of %d responses: first %.1f ms, then %.1f ms, after another answer %.1f ms%n",
          LEARNERS * answers.get(i), first, median, renewed);
      if (i == 0) {
        few = median;
      } else {
        System.out.printf("ratio %.2f%n", median / few);
      }
    }
  }

  /** The page is worked out anew once somebody has answered since. */
  private double renewed(SchoolClass of, String page) {
    LearnerCaller newcomer =
        (LearnerCaller) useCases.joinClass().join(of.code(), "Newcomer").session().caller();
    String drill = useCases.listAssignments().of(newcomer).get(0).id();
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < CALLS; i++) {
      IssuedItem item = useCases.nextItem().next(newcomer, drill).orElseThrow();
      useCases.answerItem().answer(newcomer, UUID.randomUUID(), item.id(), null, 5_000);
      long start = System.nanoTime();
      read(page);
      millis.add((System.nanoTime() - start) / 1e6);
    }
    millis.sort(null);
    return millis.get(CALLS / 2);
  }

  private double millis(String page) {
    return BigSchool.medianMillis(CALLS, () -> read(page));
  }

  private void read(String page) {
    int status = browser.get(page).statusCode();
    if (status != 200) {
      throw new IllegalStateException(page + ": " + status);
    }
  }
}
