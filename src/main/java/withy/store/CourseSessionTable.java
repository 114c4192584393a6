package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import withy.core.course.Purpose;
import withy.core.course.Session;
import withy.core.item.Concept;
import withy.core.response.DrillSet;
import withy.usecase.Course;
import withy.usecase.PlannedSession;

/** Keeps the days of courses. */
final class CourseSessionTable {
  private final Access access;
  private final WaterTable waters;
  private final DrillSetTexts texts;

  CourseSessionTable(Access access, WaterTable waters, DrillSetTexts texts) {
    this.access = access;
    this.waters = waters;
    this.texts = texts;
  }

  private record Row(
      Session session,
      @Nullable String waterFile,
      @Nullable String text,
      @Nullable String setWaterFile) {
    static Row read(ResultSet row, StatementContext context) throws SQLException {
      Session session =
          new Session(
              row.getObject("held_on", LocalDate.class),
              Objects.requireNonNull(Words.readTerm(Purpose.class, row.getString("purpose"))),
              row.getBoolean("together"),
              Words.readTerms(Concept.class, row.getString("first_met")),
              Words.readTerms(Concept.class, row.getString("again")),
              row.getInt("gap"),
              row.getInt("days_left"));
      return new Row(
          session,
          row.getString("water_file"),
          row.getString("text"),
          row.getString("set_water_file"));
    }
  }

  void insert(Handle handle, Course course) {
    for (int position = 0; position < course.sessions().size(); position++) {
      insert(handle, course.id(), position, course.sessions().get(position));
    }
  }

  private void insert(Handle handle, String course, int position, PlannedSession planned) {
    Session session = planned.session();
    DrillSet set = planned.set();
    handle
        .createUpdate(
            """
            INSERT INTO course_session (course, position, held_on, purpose, together, first_met,
              again, gap, days_left, water_file, text, set_water_file)
            VALUES (:course, :position, :on, :purpose, :together, :first, :again, :gap,
              :daysLeft, :waterFile, :text, :setWaterFile)
            """)
        .bind("course", course)
        .bind("position", position)
        .bind("on", session.on())
        .bind("purpose", session.purpose().id())
        .bind("together", session.together())
        .bind("first", Words.ofTerms(session.first()))
        .bind("again", Words.ofTerms(session.again()))
        .bind("gap", session.gap())
        .bind("daysLeft", session.daysLeft())
        .bind("waterFile", waters.keptFor(handle, planned.water()))
        .bind("text", set == null ? null : texts.write(set))
        .bind("setWaterFile", set == null ? null : texts.water(handle, set))
        .execute();
  }

  /** The days of a course; their waters are read once the rows are. */
  List<PlannedSession> of(String course) {
    List<Row> found =
        access.read(
            handle ->
                handle
                    .createQuery(
                        "SELECT * FROM course_session WHERE course = :course ORDER BY position")
                    .bind("course", course)
                    .map(Row::read)
                    .list());
    return found.stream().map(this::whole).toList();
  }

  private PlannedSession whole(Row row) {
    String text = row.text();
    return new PlannedSession(
        row.session(),
        waters.water(row.waterFile()),
        text == null ? null : texts.read(text, row.setWaterFile()));
  }
}
