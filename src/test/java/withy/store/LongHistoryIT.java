package withy.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import withy.InProcessServer;
import withy.benchmark.BigSchool;
import withy.core.item.Form;
import withy.usecase.Behind;
import withy.usecase.Behind.Which;
import withy.usecase.School;
import withy.usecase.SchoolClass;
import withy.web.Browser;

/** What a hundred times as long a history costs those who read a class: hardly anything. */
class LongHistoryIT {
  private static final int LEARNERS = 30;
  private static final int FEW = 34;
  private static final int MANY = 3_400;
  private static final int CALLS = 30;
  private static final int PAGE = 50;

  private static final Pattern SCANNED = Pattern.compile("scanCount: (\\d+)");

  @TempDir private static Path data;
  private static SchoolClass young;
  private static SchoolClass old;

  @BeforeAll
  static void fill() throws Exception {
    try (Store store = Store.open(data, Clock.systemUTC())) {
      BigSchool school = BigSchool.over(School.over(store.ports(), 3));
      young = school.addClass(url(), LEARNERS, FEW);
      old = school.addClass(url(), LEARNERS, MANY);
    }
  }

  private static String url() {
    return "jdbc:h2:async:" + data.resolve("withy");
  }

  @Test
  void aReviewOf100000ResponsesTakesAtMostTwiceAsLongAsOneOf1000() throws Exception {
    try (InProcessServer server = InProcessServer.on(data)) {
      Browser browser = new Browser(server.port());
      browser.postJson(
          "/api/sign-in", "{\"name\":\"Marlo\",\"password\":\"" + School.PASSWORD + "\"}");
      List<Double> few = new ArrayList<>();
      List<Double> many = new ArrayList<>();
      for (int i = 0; i < CALLS; i++) {
        few.add(millis(browser, young));
        many.add(millis(browser, old));
      }

      assertThat(median(many)).isLessThanOrEqualTo(2 * median(few));
    }
  }

  private static double millis(Browser browser, SchoolClass of) {
    long start = System.nanoTime();
    assertThat(browser.get("/classes/" + of.id() + "/review").statusCode()).isEqualTo(200);
    return (System.nanoTime() - start) / 1e6;
  }

  private static double median(List<Double> millis) {
    Collections.sort(millis);
    return millis.get(millis.size() / 2);
  }

  @Test
  void listsOfResponsesReadNoFurtherThanTheirPage() {
    Jdbi jdbi = Jdbi.create(url(), "sa", "");
    assertThat(behind(jdbi))
        .allSatisfy(
            which -> {
              String plan = plan(jdbi, which);
              assertThat(plan).contains("/* index sorted */");
              assertThat(scanned(plan))
                  .as(plan)
                  .isNotEmpty()
                  .allSatisfy(each -> assertThat(each).isLessThanOrEqualTo(2 * PAGE));
            });
  }

  /** One figure of each kind, of the class with the long history. */
  private static List<Behind> behind(Jdbi jdbi) {
    Map<String, Object> answer = wrong(jdbi);
    String learner = (String) answer.get("learner");
    String concept = (String) answer.get("measured");
    String key = (String) answer.get("answer_key");
    String chosen = (String) answer.get("chosen");
    String belief = (String) answer.get("misconception");
    return List.of(
        Behind.all(old.id()),
        new Behind(old.id(), null, null, concept, null, null, null, null, Which.ALL),
        new Behind(old.id(), null, null, null, null, null, null, belief, Which.ALL),
        new Behind(old.id(), learner, null, concept, null, null, null, null, Which.ALL),
        new Behind(old.id(), null, null, concept, identify(), null, null, null, Which.ALL),
        new Behind(old.id(), null, null, null, identify(), key, chosen, null, Which.ALL));
  }

  private static String identify() {
    return Form.IDENTIFY.id();
  }

  /** An answer that took one mark for another, and is not the only one of its kind. */
  private static Map<String, Object> wrong(Jdbi jdbi) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT learner, measured, answer_key, chosen, misconception FROM response
                    WHERE school_class = :class AND form = :form
                      AND NOT correct AND misconception IS NOT NULL LIMIT 1
                    """)
                .bind("class", old.id())
                .bind("form", identify())
                .mapToMap()
                .one());
  }

  private static String plan(Jdbi jdbi, Behind which) {
    Map<String, Object> bound = new LinkedHashMap<>();
    String query = EvidenceTable.newest(which, null, bound);
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("EXPLAIN ANALYZE " + query)
                .bindMap(bound)
                .bind("most", PAGE)
                .mapTo(String.class)
                .one());
  }

  /** How many entries the engine looked at in each table. */
  private static List<Integer> scanned(String plan) {
    return SCANNED.matcher(plan).results().map(each -> Integer.valueOf(each.group(1))).toList();
  }
}
