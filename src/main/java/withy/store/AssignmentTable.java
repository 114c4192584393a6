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
  private final WaterTable waters;

  AssignmentTable(Jdbi jdbi, WaterTable waters) {
    this.jdbi = jdbi;
    this.waters = waters;
  }

  @Override
  public void add(Assignment added) {
    Composition composition = added.composition();
    jdbi.useTransaction(
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO assignment (id, school_class, title, concepts, forms, time_of_day,
                      item_count, due, assigned_at, water_file)
                    VALUES (:id, :class, :title, :concepts, :forms, :time, :count, :due,
                      :assignedAt, :waterFile)
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
                .bind("waterFile", waters.keptFor(handle, composition.water()))
                .execute());
  }

  private static @Nullable String word(@Nullable TimeOfDay time) {
    return time == null ? null : time.id();
  }

  @Override
  public Optional<Assignment> find(String id) {
    Optional<Stored> found =
        jdbi.withHandle(
            handle ->
                handle
                    .createQuery("SELECT * FROM assignment WHERE id = :id")
                    .bind("id", id)
                    .map(Stored::read)
                    .findOne());
    return found.map(this::whole);
  }

  @Override
  public List<Assignment> of(String schoolClass) {
    List<Stored> found =
        jdbi.withHandle(
            handle ->
                handle
                    .createQuery(
                        """
                        SELECT * FROM assignment WHERE school_class = :class
                        ORDER BY assigned_at DESC, id
                        """)
                    .bind("class", schoolClass)
                    .map(Stored::read)
                    .list());
    return found.stream().map(this::whole).toList();
  }

  /** The water is read once the row is, since that may need a connection of its own. */
  private Assignment whole(Stored stored) {
    Assignment dry = stored.assignment();
    return new Assignment(
        dry.id(),
        dry.schoolClass(),
        dry.title(),
        dry.composition().in(waters.water(stored.waterFile())),
        dry.due(),
        dry.assignedAt());
  }

  private record Stored(Assignment assignment, @Nullable String waterFile) {
    static Stored read(ResultSet row, StatementContext context) throws SQLException {
      Composition composition =
          new Composition(
              Words.readTerms(Concept.class, row.getString("concepts")),
              Words.readTerms(Form.class, row.getString("forms")),
              Words.readTerm(TimeOfDay.class, row.getString("time_of_day")),
              row.getInt("item_count"));
      Assignment assignment =
          new Assignment(
              row.getString("id"),
              row.getString("school_class"),
              row.getString("title"),
              composition,
              Moments.readOptional(row, "due"),
              Moments.read(row, "assigned_at"));
      return new Stored(assignment, row.getString("water_file"));
    }
  }
}
