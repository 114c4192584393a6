package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Form;
import withy.core.scenario.TimeOfDay;
import withy.usecase.Assignment;
import withy.usecase.Assignments;

/** Keeps assignments. */
final class AssignmentTable implements Assignments {
  private final Jdbi jdbi;

  AssignmentTable(Jdbi jdbi) {
    this.jdbi = jdbi;
  }

  @Override
  public void add(Assignment added) {
    Composition composition = added.composition();
    jdbi.useHandle(
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO assignment (id, school_class, title, concepts, forms, time_of_day,
                      item_count, due, assigned_at)
                    VALUES (:id, :class, :title, :concepts, :forms, :time, :count, :due, :assignedAt)
                    """)
                .bind("id", added.id())
                .bind("class", added.schoolClass())
                .bind("title", added.title())
                .bind("concepts", Words.ofTerms(composition.concepts()))
                .bind("forms", Words.ofTerms(composition.forms()))
                .bind("time", word(composition.time()))
                .bind("count", composition.length())
                .bind("due", added.due())
                .bind("assignedAt", added.assignedAt())
                .execute());
  }

  private static @Nullable String word(@Nullable TimeOfDay time) {
    return time == null ? null : time.id();
  }

  @Override
  public Optional<Assignment> find(String id) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery("SELECT * FROM assignment WHERE id = :id")
                .bind("id", id)
                .map(AssignmentTable::read)
                .findOne());
  }

  @Override
  public List<Assignment> of(String schoolClass) {
    return jdbi.withHandle(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT * FROM assignment WHERE school_class = :class
                    ORDER BY assigned_at DESC, id
                    """)
                .bind("class", schoolClass)
                .map(AssignmentTable::read)
                .list());
  }

  private static Assignment read(ResultSet row, StatementContext context) throws SQLException {
    Composition composition =
        new Composition(
            Words.readTerms(Concept.class, row.getString("concepts")),
            Words.readTerms(Form.class, row.getString("forms")),
            Words.readTerm(TimeOfDay.class, row.getString("time_of_day")),
            row.getInt("item_count"));
    return new Assignment(
        row.getString("id"),
        row.getString("school_class"),
        row.getString("title"),
        composition,
        Moments.readOptional(row, "due"),
        Moments.read(row, "assigned_at"));
  }
}
