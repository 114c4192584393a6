package withy.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import withy.usecase.Behind;
import withy.usecase.StoredResponse;

/** That a kind of question is read from its own index, and no more of it than is shown. */
class KindsOfQuestionTest {
  private static final String URL = "jdbc:h2:mem:kinds;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";
  private static final Pattern SCANNED = Pattern.compile("scanCount: (\\d+)");

  /** Of a thousand answers on the concept one in a hundred is of the form, all of them old. */
  private static final String ANSWERS =
      """
      INSERT INTO response (item, learner, client_id, school_class, assignment, form, practice,
        concepts, answer_key, chosen, misconception, offered, correct, shown_ms, answered_at)
      SELECT LPAD(CAST(x AS VARCHAR), 32, '0'), REPEAT('1', 32), RANDOM_UUID(), REPEAT('2', 32),
        REPEAT('3', 32), CASE WHEN x <= 10 THEN 'side' ELSE 'light' END, 'iala-a', 'lateral-side',
        'port', 'port', NULL, '', TRUE, 4000,
        DATEADD(SECOND, x, TIMESTAMP WITH TIME ZONE '2026-05-01 09:00:00Z')
      FROM SYSTEM_RANGE(1, 1000)
      """;

  private Store store;
  private HikariDataSource pool;
  private Jdbi jdbi;

  @BeforeEach
  void fill() {
    store = Store.over(URL, DataFolder.of(Path.of(System.getProperty("java.io.tmpdir"))));
    pool = Database.pool(URL, 1);
    jdbi = Jdbi.create(pool);
    jdbi.useHandle(
        handle -> {
          handle.execute("SET REFERENTIAL_INTEGRITY FALSE");
          handle.execute(
              "INSERT INTO learner (id, school_class, nickname, folded, return_digest)"
                  + " VALUES (REPEAT('1', 32), REPEAT('2', 32), 'Tern', 'tern', 'digest')");
          handle.execute(ANSWERS);
          handle.execute("ANALYZE");
        });
  }

  @AfterEach
  void close() {
    pool.close();
    store.close();
    Database.shutDown(URL);
  }

  private String plan(String query, Map<String, Object> bound) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("EXPLAIN ANALYZE " + query)
                .bindMap(bound)
                .mapTo(String.class)
                .one());
  }

  private static long scanned(String plan) {
    Matcher counts = SCANNED.matcher(plan);
    return counts.results().mapToLong(each -> Long.parseLong(each.group(1))).sum();
  }

  @Test
  void looksAtTheAnswersOfAKindAloneHoweverManyOthersThereAre() {
    Map<String, Object> bound = new LinkedHashMap<>();
    Behind kind = Behind.kind("2".repeat(32), "side", "lateral-side");
    String query = EvidenceTable.newest(kind, null, bound);
    bound.put("most", 2_001);
    String plan = plan(query, bound);
    assertThat(plan).contains("RESPONSE_OF_KIND").contains("index sorted");
    assertThat(scanned(plan)).isLessThan(40);
    List<StoredResponse> found = store.ports().evidence().newest(kind, null, 2_001);
    assertThat(found).hasSize(10);
    assertThat(found.get(0).response().item()).endsWith("10");
  }

  @Test
  void stopsAtAsManyAsAreAskedFor() {
    Map<String, Object> bound = new LinkedHashMap<>();
    Behind kind = Behind.kind("2".repeat(32), "light", "lateral-side");
    String query = EvidenceTable.newest(kind, null, bound);
    bound.put("most", 50);
    assertThat(scanned(plan(query, bound))).isLessThan(200);
  }

  @Test
  void seesWhichKindsThereAreWithoutReadingTheAnswers() {
    String plan = plan(EvidenceTable.KINDS, Map.of("class", "2".repeat(32)));
    assertThat(plan).contains("RESPONSE_OF_KIND");
    assertThat(scanned(plan)).isLessThan(1_000);
    assertThat(store.ports().evidence().kinds("2".repeat(32))).hasSize(2);
  }
}
