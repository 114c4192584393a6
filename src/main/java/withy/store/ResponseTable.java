package withy.store;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import withy.core.measurement.LearnerSums;
import withy.core.response.Response;
import withy.usecase.Issue;
import withy.usecase.Responses;
import withy.usecase.StoredResponse;

/** Keeps responses. */
final class ResponseTable implements Responses {
  private final Access access;

  ResponseTable(Access access) {
    this.access = access;
  }

  @Override
  public boolean add(StoredResponse response) {
    return access.writeAndTell(
        handle -> {
          if (!Clash.free(handle, free -> insert(free, response))) {
            return false;
          }
          SumsTable.add(handle, response);
          return true;
        });
  }

  private static void insert(Handle handle, StoredResponse stored) {
    Response response = stored.response();
    handle
        .createUpdate(
            """
            INSERT INTO response (item, learner, client_id, school_class, assignment, form, practice,
              concepts, answer_key, chosen, misconception, offered, correct, shown_ms, answered_at, rapid)
            VALUES (:item, :learner, :clientId, :class, :assignment, :form, :practice,
              :concepts, :key, :chosen, :misconception, :offered, :correct, :shown, :answeredAt, :rapid)
            """)
        .bind("item", response.item())
        .bind("learner", stored.learner())
        .bind("clientId", stored.id())
        .bind("class", stored.schoolClass())
        .bind("assignment", response.assignment())
        .bind("form", response.form())
        .bind("practice", response.practice())
        .bind("concepts", Words.of(response.concepts()))
        .bind("key", response.key())
        .bind("chosen", response.option())
        .bind("misconception", response.misconception())
        .bind("offered", Words.ofOffered(response.offered()))
        .bind("correct", response.correct())
        .bind("shown", response.shownMillis())
        .bind("answeredAt", response.answeredAt())
        .bind("rapid", response.rapid())
        .execute();
  }

  @Override
  public Optional<StoredResponse> ofItem(String item) {
    return access.read(
        handle ->
            handle
                .createQuery(ResponseRow.SELECT + " WHERE r.item = :item")
                .bind("item", item)
                .map(ResponseRow::read)
                .findOne());
  }

  @Override
  public Optional<StoredResponse> byId(String learner, UUID id) {
    return access.read(
        handle ->
            handle
                .createQuery(ResponseRow.SELECT + " WHERE r.learner = :learner AND client_id = :id")
                .bind("learner", learner)
                .bind("id", id)
                .map(ResponseRow::read)
                .findOne());
  }

  @Override
  public int answered(String learner, String assignment) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT COUNT(*) FROM response
                    WHERE assignment = :assignment AND learner = :learner
                    """)
                .bind("assignment", assignment)
                .bind("learner", learner)
                .mapTo(Integer.class)
                .one());
  }

  @Override
  public Map<String, Count> counts(String assignment) {
    Map<String, Count> counts = new LinkedHashMap<>();
    access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT learner, COUNT(*) AS answered, MAX(answered_at) AS last_answered
                    FROM response WHERE assignment = :assignment GROUP BY learner ORDER BY learner
                    """)
                .bind("assignment", assignment)
                .map(
                    (row, context) ->
                        counts.put(
                            row.getString("learner"),
                            new Count(row.getInt("answered"), Moments.read(row, "last_answered"))))
                .list());
    return counts;
  }

  @Override
  public List<StoredResponse> ofClass(String schoolClass) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    ResponseRow.SELECT
                        + " WHERE r.school_class = :class ORDER BY r.answered_at, r.item")
                .bind("class", schoolClass)
                .map(ResponseRow::read)
                .list());
  }

  @Override
  public List<Response> of(String learner, String assignment) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    ResponseRow.SELECT
                        + """
                         WHERE r.assignment = :assignment AND r.learner = :learner
                        ORDER BY r.answered_at, r.item
                        """)
                .bind("assignment", assignment)
                .bind("learner", learner)
                .map(ResponseRow::read)
                .map(StoredResponse::response)
                .list());
  }

  @Override
  public List<Response> before(Issue issue) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    ResponseRow.SELECT
                        + """
                         WHERE r.learner = :learner AND r.measured = :concept
                        AND r.answered_at <= :issued AND r.item <> :item
                        ORDER BY r.answered_at, r.item
                        """)
                .bind("learner", issue.learner())
                .bind("concept", issue.concept().id())
                .bind("issued", issue.issuedAt())
                .bind("item", issue.id())
                .map(ResponseRow::read)
                .map(StoredResponse::response)
                .list());
  }

  @Override
  public List<Chosen> chosen(String assignment) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT chosen, COUNT(*) AS times FROM response
                    WHERE assignment = :assignment GROUP BY chosen ORDER BY chosen
                    """)
                .bind("assignment", assignment)
                .map((row, context) -> new Chosen(row.getString("chosen"), row.getInt("times")))
                .list());
  }

  @Override
  public Set<String> heard(String schoolClass) {
    return access.read(
        handle ->
            new LinkedHashSet<>(
                handle
                    .createQuery(
                        """
                        SELECT learner FROM learner_sums
                        WHERE school_class = :class AND answers > 0 ORDER BY learner
                        """)
                    .bind("class", schoolClass)
                    .mapTo(String.class)
                    .list()));
  }

  @Override
  public Map<String, Overview> overview(String instructor) {
    return access.read(handle -> SumsTable.overview(handle, instructor));
  }

  @Override
  public List<Response> atPosition(String assignment, int position) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    ResponseRow.SELECT
                        + """
                         JOIN issued_item i ON i.id = r.item
                        WHERE r.assignment = :assignment AND i.position = :position
                        ORDER BY r.answered_at, r.item
                        """)
                .bind("assignment", assignment)
                .bind("position", position)
                .map(ResponseRow::read)
                .map(StoredResponse::response)
                .list());
  }

  @Override
  public List<LearnerSums> sums(String schoolClass) {
    return SumsTable.ofClass(access, schoolClass);
  }

  @Override
  public Optional<LearnerSums> sumsOf(String learner) {
    return SumsTable.of(access, learner);
  }

  @Override
  public List<LearnerSums> latestSums(int most) {
    return SumsTable.latest(access, most);
  }

  /** The learners of a class are few, so this does not depend on how much they answered. */
  @Override
  public Stand stand(String schoolClass) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT COALESCE(SUM(answers), 0) AS responses, MAX(last_answered) AS last_answered
                    FROM learner_sums WHERE school_class = :class
                    """)
                .bind("class", schoolClass)
                .map(
                    (row, context) ->
                        new Stand(
                            row.getLong("responses"), Moments.readOptional(row, "last_answered")))
                .one());
  }
}
