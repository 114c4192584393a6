package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.Course;
import withy.usecase.Courses;
import withy.usecase.DrillSetFiles;

/** Keeps courses. */
final class CourseTable implements Courses {
  private final Access access;
  private final WaterTable waters;
  private final CourseSessionTable sessions;

  CourseTable(Access access, WaterTable waters, DrillSetFiles files) {
    this.access = access;
    this.waters = waters;
    this.sessions = new CourseSessionTable(access, waters, new DrillSetTexts(waters, files));
  }

  private record Row(String id, String instructor, String name, LocalDate practical) {
    static Row read(ResultSet row, StatementContext context) throws SQLException {
      return new Row(
          row.getString("id"),
          row.getString("instructor"),
          row.getString("name"),
          row.getObject("practical", LocalDate.class));
    }
  }

  @Override
  public void keep(Course course) {
    access.write(
        handle -> {
          List<String> before = copies(handle, course.id());
          handle
              .createUpdate(
                  """
                  MERGE INTO course (id, instructor, name, practical) KEY (id)
                  VALUES (:id, :instructor, :name, :practical)
                  """)
              .bind("id", course.id())
              .bind("instructor", course.instructor())
              .bind("name", course.name())
              .bind("practical", course.practical())
              .execute();
          removeParts(handle, course.id());
          insertWaters(handle, course);
          insertClasses(handle, course);
          sessions.insert(handle, course);
          before.forEach(digest -> WaterTable.forget(handle, digest));
        });
  }

  /** The copies of waters that a course asks for. */
  private static List<String> copies(Handle handle, String id) {
    return handle
        .createQuery(
            """
            SELECT water_file FROM course_water WHERE course = :id
            UNION SELECT water_file FROM course_session
              WHERE course = :id AND water_file IS NOT NULL
            UNION SELECT set_water_file FROM course_session
              WHERE course = :id AND set_water_file IS NOT NULL
            """)
        .bind("id", id)
        .mapTo(String.class)
        .list();
  }

  private static void removeParts(Handle handle, String id) {
    for (String table : List.of("course_water", "course_class", "course_session")) {
      handle
          .createUpdate("DELETE FROM <table> WHERE course = :id")
          .define("table", table)
          .bind("id", id)
          .execute();
    }
  }

  private void insertWaters(Handle handle, Course course) {
    for (int position = 0; position < course.waters().size(); position++) {
      handle
          .createUpdate(
              """
              INSERT INTO course_water (course, position, water_file)
              VALUES (:course, :position, :waterFile)
              """)
          .bind("course", course.id())
          .bind("position", position)
          .bind("waterFile", waters.keptFor(handle, course.waters().get(position)))
          .execute();
    }
  }

  /** The key decides: a class that took another course takes this one now. */
  private static void insertClasses(Handle handle, Course course) {
    for (String each : course.classes()) {
      handle
          .createUpdate(
              """
              MERGE INTO course_class (school_class, course) KEY (school_class)
              VALUES (:class, :course)
              """)
          .bind("class", each)
          .bind("course", course.id())
          .execute();
    }
  }

  @Override
  public Optional<Course> find(String id) {
    return list("id = :value", id).stream().findFirst();
  }

  @Override
  public List<Course> of(String instructor) {
    return list("instructor = :value", instructor);
  }

  @Override
  public Optional<Course> ofClass(String schoolClass) {
    String which = "id = (SELECT course FROM course_class WHERE school_class = :value)";
    return list(which, schoolClass).stream().findFirst();
  }

  private List<Course> list(String which, String value) {
    List<Row> found =
        access.read(
            handle ->
                handle
                    .createQuery(
                        "SELECT * FROM course WHERE "
                            + which
                            + " ORDER BY practical DESC, name, id")
                    .bind("value", value)
                    .map(Row::read)
                    .list());
    return found.stream().map(this::whole).toList();
  }

  private Course whole(Row row) {
    return new Course(
        row.id(),
        row.instructor(),
        row.name(),
        row.practical(),
        watersOf(row.id()),
        strings(
            """
            SELECT t.school_class FROM course_class t JOIN school_class c ON c.id = t.school_class
            WHERE t.course = :id ORDER BY c.name, c.id
            """,
            row.id()),
        sessions.of(row.id()));
  }

  /** Each water is read once the rows are, since that may need a connection of its own. */
  private List<SurveyedWater> watersOf(String id) {
    List<SurveyedWater> read = new ArrayList<>();
    String sql = "SELECT water_file FROM course_water WHERE course = :id ORDER BY position";
    for (String digest : strings(sql, id)) {
      read.add(Objects.requireNonNull(waters.water(digest)));
    }
    return read;
  }

  private List<String> strings(String sql, String id) {
    return access.read(handle -> handle.createQuery(sql).bind("id", id).mapTo(String.class).list());
  }

  @Override
  public void leave(String schoolClass) {
    access.write(
        handle ->
            handle
                .createUpdate("DELETE FROM course_class WHERE school_class = :class")
                .bind("class", schoolClass)
                .execute());
  }

  @Override
  public void remove(String id) {
    access.write(
        handle -> {
          List<String> before = copies(handle, id);
          removeParts(handle, id);
          handle.createUpdate("DELETE FROM course WHERE id = :id").bind("id", id).execute();
          before.forEach(digest -> WaterTable.forget(handle, digest));
        });
  }
}
