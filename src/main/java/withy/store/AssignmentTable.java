package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Difficulty;
import withy.core.item.Form;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;
import withy.usecase.Assignment;
import withy.usecase.Assignments;
import withy.usecase.DrillTerms;
import withy.usecase.RoomItem;

/** Keeps assignments. */
final class AssignmentTable implements Assignments {
  private static final String SELECT =
      """
      SELECT a.*, r.practice AS room_practice, r.drawn, r.seed AS room_seed, r.item_index, r.generator_version,
        r.revealed_at
      FROM assignment a LEFT JOIN room_item r ON r.assignment = a.id
      """;

  private final Access access;
  private final WaterTable waters;

  AssignmentTable(Access access, WaterTable waters) {
    this.access = access;
    this.waters = waters;
  }

  @Override
  public void add(Assignment added) {
    access.write(
        handle -> {
          insert(handle, added);
          if (added.room() != null) {
            insert(handle, added.id(), added.room());
          }
        });
  }

  private void insert(Handle handle, Assignment added) {
    Composition composition = added.composition();
    handle
        .createUpdate(
            """
                    INSERT INTO assignment (id, school_class, title, concepts, forms, time_of_day,
                      item_count, due, assigned_at, water_file, kind, opens_at, seed, own,
                      practice, difficulty)
                    VALUES (:id, :class, :title, :concepts, :forms, :time, :count, :due,
                      :assignedAt, :waterFile, :kind, :opensAt, :seed, :own,
                      :practice, :difficulty)
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
        .bind("kind", added.terms().kind().id())
        .bind("opensAt", added.terms().opensAt())
        .bind("seed", added.terms().seed())
        .bind("own", added.terms().own())
        .bind("practice", word(composition.practice()))
        .bind("difficulty", word(composition.difficulty()))
        .execute();
    TermsTable.insert(handle, added);
  }

  private static void insert(Handle handle, String assignment, RoomItem room) {
    handle
        .createUpdate(
            """
            INSERT INTO room_item (assignment, practice, drawn, seed, item_index,
              generator_version, revealed_at)
            VALUES (:assignment, :practice, :drawn, :seed, :index, :version, :revealedAt)
            """)
        .bind("assignment", assignment)
        .bind("practice", room.practice().id())
        .bind("drawn", room.drawn())
        .bind("seed", room.seed())
        .bind("index", room.index())
        .bind("version", room.generatorVersion())
        .bind("revealedAt", room.revealedAt())
        .execute();
  }

  @Override
  public void reveal(String id, Instant at) {
    access.write(
        handle ->
            handle
                .createUpdate(
                    """
                    UPDATE room_item SET revealed_at = :at
                    WHERE assignment = :id AND revealed_at IS NULL
                    """)
                .bind("id", id)
                .bind("at", at)
                .execute());
  }

  @Override
  public void revealOthers(Assignment put) {
    access.write(
        handle ->
            handle
                .createUpdate(
                    """
                    UPDATE room_item SET revealed_at = :at
                    WHERE revealed_at IS NULL AND assignment <> :id
                      AND assignment IN (SELECT id FROM assignment WHERE school_class = :class)
                    """)
                .bind("id", put.id())
                .bind("class", put.schoolClass())
                .bind("at", put.assignedAt())
                .execute());
  }

  @Override
  public void extend(String id, String learner, Instant due) {
    access.write(handle -> TermsTable.extend(handle, id, learner, due));
  }

  private static @Nullable String word(@Nullable Term term) {
    return term == null ? null : term.id();
  }

  @Override
  public Optional<Assignment> find(String id) {
    Optional<Stored> found =
        access.read(
            handle ->
                handle
                    .createQuery(SELECT + " WHERE a.id = :id")
                    .bind("id", id)
                    .map(Stored::read)
                    .findOne());
    return found.map(this::whole);
  }

  @Override
  public List<Assignment> of(String schoolClass) {
    List<Stored> found =
        access.read(
            handle ->
                handle
                    .createQuery(
                        SELECT + " WHERE a.school_class = :class ORDER BY a.assigned_at DESC, a.id")
                    .bind("class", schoolClass)
                    .map(Stored::read)
                    .list());
    return found.stream().map(this::whole).toList();
  }

  /** The water is read once the row is, since that may need a connection of its own. */
  private Assignment whole(Stored stored) {
    Assignment dry = stored.assignment();
    DrillTerms terms = access.read(handle -> TermsTable.whole(handle, dry));
    return new Assignment(
        dry.id(),
        dry.schoolClass(),
        dry.title(),
        dry.composition().in(waters.water(stored.waterFile())),
        dry.due(),
        dry.assignedAt(),
        dry.room(),
        terms);
  }

  private record Stored(Assignment assignment, @Nullable String waterFile) {
    static Stored read(ResultSet row, StatementContext context) throws SQLException {
      Composition composition =
          new Composition(
              Words.readTerms(Concept.class, row.getString("concepts")),
              Words.readTerms(Form.class, row.getString("forms")),
              Words.readTerm(TimeOfDay.class, row.getString("time_of_day")),
              row.getInt("item_count"),
              null,
              practice(row.getString("practice")),
              Words.readTerm(Difficulty.class, row.getString("difficulty")));
      Assignment assignment =
          new Assignment(
              row.getString("id"),
              row.getString("school_class"),
              row.getString("title"),
              composition,
              Moments.readOptional(row, "due"),
              Moments.read(row, "assigned_at"),
              room(row),
              TermsTable.read(row));
      return new Stored(assignment, row.getString("water_file"));
    }

    private static @Nullable Practice practice(@Nullable String word) {
      return word == null ? null : Practice.parse(word);
    }

    private static @Nullable RoomItem room(ResultSet row) throws SQLException {
      String practice = row.getString("room_practice");
      return practice == null
          ? null
          : new RoomItem(
              Practice.parse(practice),
              row.getString("drawn"),
              row.getLong("room_seed"),
              row.getInt("item_index"),
              row.getInt("generator_version"),
              Moments.readOptional(row, "revealed_at"));
    }
  }
}
