package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import withy.core.measurement.LearnerSums;
import withy.core.response.Response;
import withy.usecase.Learner;
import withy.usecase.Responses.Overview;
import withy.usecase.StoredResponse;

/**
 * Keeps what the answers of each learner add up to, beside the responses and never apart from them.
 */
final class SumsTable {
  private static final String SELECT =
      """
      SELECT s.learner, s.format, s.sums, l.nickname
      FROM learner_sums s JOIN learner l ON l.id = s.learner
      """;

  private SumsTable() {}

  private record Row(String learner, String nickname, int format, String text) {
    static Row read(ResultSet row, StatementContext context) throws SQLException {
      return new Row(
          row.getString("learner"),
          row.getString("nickname"),
          row.getInt("format"),
          row.getString("sums"));
    }

    boolean isCurrent() {
      return format == SumsText.FORMAT;
    }

    LearnerSums sums() {
      return SumsText.read(nickname, text);
    }
  }

  /** A learner who joins has answered nothing. */
  static void begin(Handle handle, Learner learner) {
    handle
        .createUpdate(
            """
            INSERT INTO learner_sums (learner, school_class, answers, last_answered, format, sums)
            VALUES (:learner, :class, 0, NULL, :format, :sums)
            """)
        .bind("learner", learner.id())
        .bind("class", learner.schoolClass())
        .bind("format", SumsText.FORMAT)
        .bind("sums", SumsText.of(LearnerSums.none(learner.nickname())))
        .execute();
  }

  /**
   * Adds a response that was just stored. One that was answered before another that was stored
   * already, as two phones at once may do, has all of them counted anew in their order.
   */
  static void add(Handle handle, StoredResponse stored) {
    row(handle, stored.learner())
        .ifPresent(
            row -> {
              LearnerSums kept = row.isCurrent() ? row.sums() : null;
              LearnerSums sums =
                  kept != null && isNext(kept, stored.response())
                      ? kept.plus(stored.response())
                      : recount(handle, row.learner(), row.nickname());
              write(handle, stored.learner(), sums);
            });
  }

  private static boolean isNext(LearnerSums kept, Response response) {
    Instant last = kept.last();
    return last == null || last.isBefore(response.answeredAt());
  }

  private static Optional<Row> row(Handle handle, String learner) {
    return handle
        .createQuery(SELECT + " WHERE s.learner = :learner")
        .bind("learner", learner)
        .map(Row::read)
        .findOne();
  }

  private static void write(Handle handle, String learner, LearnerSums sums) {
    handle
        .createUpdate(
            """
            UPDATE learner_sums
            SET answers = :answers, last_answered = :last, format = :format, sums = :sums
            WHERE learner = :learner
            """)
        .bind("answers", sums.answers())
        .bind("last", sums.last())
        .bind("format", SumsText.FORMAT)
        .bind("sums", SumsText.of(sums))
        .bind("learner", learner)
        .execute();
  }

  /** The sums by all responses of a learner. */
  static LearnerSums recount(Handle handle, String learner, String nickname) {
    LearnerSums sums = LearnerSums.none(nickname);
    List<StoredResponse> all =
        handle
            .createQuery(
                ResponseRow.SELECT + " WHERE r.learner = :learner ORDER BY r.answered_at, r.item")
            .bind("learner", learner)
            .map(ResponseRow::read)
            .list();
    for (StoredResponse each : all) {
      sums = sums.plus(each.response());
    }
    return sums;
  }

  /** The sums of a learner. */
  static Optional<LearnerSums> of(Access access, String learner) {
    return access.read(handle -> row(handle, learner)).map(row -> current(access, row));
  }

  /** The sums of those of a class who answered, by nickname. */
  static List<LearnerSums> ofClass(Access access, String schoolClass) {
    List<Row> rows =
        access.read(
            handle ->
                handle
                    .createQuery(
                        SELECT
                            + """
                                 WHERE s.school_class = :class AND s.answers > 0
                                ORDER BY l.nickname, l.id
                                """)
                    .bind("class", schoolClass)
                    .map(Row::read)
                    .list());
    return rows.stream().map(row -> current(access, row)).toList();
  }

  /** How much each class of an instructor answered; it reads an index and none of the sums. */
  static Map<String, Overview> overview(Handle handle, String instructor) {
    Map<String, Overview> classes = new LinkedHashMap<>();
    handle
        .createQuery(
            """
            SELECT c.id, COUNT(s.learner) AS learners, COALESCE(SUM(s.answers), 0) AS answers,
              MAX(s.last_answered) AS last_answered
            FROM school_class c LEFT JOIN learner_sums s ON s.school_class = c.id
            WHERE c.instructor = :instructor GROUP BY c.id ORDER BY c.id
            """)
        .bind("instructor", instructor)
        .map(
            (row, context) ->
                classes.put(
                    row.getString("id"),
                    new Overview(
                        row.getInt("learners"),
                        row.getLong("answers"),
                        Moments.readOptional(row, "last_answered"))))
        .list();
    return classes;
  }

  /** The sums of those who answered last, at most so many. */
  static List<LearnerSums> latest(Access access, int most) {
    List<Row> rows =
        access.read(
            handle ->
                handle
                    .createQuery(
                        SELECT
                            + """
                                 WHERE s.learner IN (
                                  SELECT learner FROM learner_sums WHERE last_answered IS NOT NULL
                                  ORDER BY last_answered DESC, learner
                                  FETCH FIRST :most ROWS ONLY)
                                ORDER BY s.last_answered DESC, s.learner
                                """)
                    .bind("most", most)
                    .map(Row::read)
                    .list());
    return rows.stream().map(row -> current(access, row)).toList();
  }

  /** Those of another program's format are counted anew and kept. */
  private static LearnerSums current(Access access, Row row) {
    return row.isCurrent() ? row.sums() : access.writeAndTell(handle -> renewed(handle, row));
  }

  private static LearnerSums renewed(Handle handle, Row row) {
    LearnerSums sums = recount(handle, row.learner(), row.nickname());
    write(handle, row.learner(), sums);
    return sums;
  }
}
