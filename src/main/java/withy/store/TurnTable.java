package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.statement.StatementContext;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.usecase.Assignment;
import withy.usecase.Turns;

/** Looks up what learners answered the time before. */
final class TurnTable implements Turns {
  private final Access access;

  TurnTable(Access access) {
    this.access = access;
  }

  @Override
  public List<Turn> of(Assignment assignment, Concept concept, Form form) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                        SELECT r.correct, (
                          SELECT b.correct FROM response b
                          WHERE b.learner = r.learner AND b.form = :form
                          AND b.measured = :concept
                          AND b.answered_at < r.answered_at AND b.item <> r.item AND NOT b.rapid
                          ORDER BY b.answered_at DESC, b.item DESC FETCH FIRST ROW ONLY) AS before
                        FROM response r WHERE r.assignment = :assignment
                        ORDER BY r.answered_at, r.item
                        """)
                .bind("assignment", assignment.id())
                .bind("concept", concept.id())
                .bind("form", form.id())
                .map(TurnTable::read)
                .list());
  }

  private static Turn read(ResultSet row, StatementContext context) throws SQLException {
    return new Turn(row.getObject("before", Boolean.class), row.getBoolean("correct"));
  }
}
