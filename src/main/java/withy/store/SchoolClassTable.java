package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import withy.core.mark.Practice;
import withy.usecase.SchoolClass;
import withy.usecase.SchoolClasses;

/** Keeps classes. */
final class SchoolClassTable implements SchoolClasses {
  private final Access access;

  SchoolClassTable(Access access) {
    this.access = access;
  }

  @Override
  public boolean isEmpty() {
    return access.read(
        handle ->
            handle.createQuery("SELECT COUNT(*) FROM school_class").mapTo(Integer.class).one()
                == 0);
  }

  @Override
  public boolean add(SchoolClass added) {
    return Clash.free(
        access,
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO school_class (id, name, practice, code, instructor)
                    VALUES (:id, :name, :practice, :code, :instructor)
                    """)
                .bind("id", added.id())
                .bind("name", added.name())
                .bind("practice", added.practice().id())
                .bind("code", added.code())
                .bind("instructor", added.instructor())
                .execute());
  }

  @Override
  public Optional<SchoolClass> find(String id) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM school_class WHERE id = :id")
                .bind("id", id)
                .map(SchoolClassTable::read)
                .findOne());
  }

  @Override
  public Optional<SchoolClass> byCode(String code) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM school_class WHERE code = :code")
                .bind("code", code)
                .map(SchoolClassTable::read)
                .findOne());
  }

  @Override
  public List<SchoolClass> of(String instructor) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    "SELECT * FROM school_class WHERE instructor = :instructor ORDER BY name, id")
                .bind("instructor", instructor)
                .map(SchoolClassTable::read)
                .list());
  }

  @Override
  public void handOver(String id, String instructor) {
    access.write(
        handle ->
            handle
                .createUpdate("UPDATE school_class SET instructor = :instructor WHERE id = :id")
                .bind("id", id)
                .bind("instructor", instructor)
                .execute());
  }

  private static SchoolClass read(ResultSet row, StatementContext context) throws SQLException {
    return new SchoolClass(
        row.getString("id"),
        row.getString("name"),
        Practice.parse(row.getString("practice")),
        row.getString("code"),
        row.getString("instructor"));
  }
}
