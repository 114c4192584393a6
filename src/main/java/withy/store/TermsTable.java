package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import withy.core.response.DrillKind;
import withy.usecase.Assignment;
import withy.usecase.DrillTerms;

/** Keeps whom a drill is for, and until when. */
final class TermsTable {
  private TermsTable() {}

  static void insert(Handle handle, Assignment added) {
    for (String learner : added.terms().learners()) {
      handle
          .createUpdate(
              "INSERT INTO assignment_learner (assignment, learner) VALUES (:assignment, :learner)")
          .bind("assignment", added.id())
          .bind("learner", learner)
          .execute();
    }
  }

  static void extend(Handle handle, String assignment, String learner, Instant due) {
    handle
        .createUpdate(
            """
            MERGE INTO extension (assignment, learner, due) KEY (assignment, learner)
            VALUES (:assignment, :learner, :due)
            """)
        .bind("assignment", assignment)
        .bind("learner", learner)
        .bind("due", due)
        .execute();
  }

  /** The terms that stand in the row of the assignment itself. */
  static DrillTerms read(ResultSet row) throws SQLException {
    return new DrillTerms(
        Objects.requireNonNull(Words.readTerm(DrillKind.class, row.getString("kind"))),
        Moments.readOptional(row, "opens_at"),
        row.getLong("seed"),
        List.of(),
        row.getBoolean("own"),
        Map.of());
  }

  /** The terms with those of single learners. */
  static DrillTerms whole(Handle handle, Assignment assignment) {
    DrillTerms plain = assignment.terms();
    List<String> learners =
        handle
            .createQuery(
                """
                SELECT learner FROM assignment_learner WHERE assignment = :assignment
                ORDER BY learner
                """)
            .bind("assignment", assignment.id())
            .mapTo(String.class)
            .list();
    Map<String, Instant> extensions = new TreeMap<>();
    handle
        .createQuery("SELECT learner, due FROM extension WHERE assignment = :assignment")
        .bind("assignment", assignment.id())
        .map((row, context) -> extensions.put(row.getString("learner"), Moments.read(row, "due")))
        .list();
    return new DrillTerms(
        plain.kind(), plain.opensAt(), plain.seed(), learners, plain.own(), extensions);
  }
}
