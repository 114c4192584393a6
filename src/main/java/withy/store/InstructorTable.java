package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import withy.usecase.InstructorAccount;
import withy.usecase.Instructors;

/** Keeps instructors. */
final class InstructorTable implements Instructors {
  private final Access access;

  InstructorTable(Access access) {
    this.access = access;
  }

  @Override
  public boolean isEmpty() {
    return access.read(
        handle ->
            handle.createQuery("SELECT COUNT(*) FROM instructor").mapTo(Integer.class).one() == 0);
  }

  @Override
  public boolean addFirst(InstructorAccount account, String folded) {
    return access.writeAndTell(handle -> addFirst(handle, account, folded));
  }

  private static boolean addFirst(Handle handle, InstructorAccount account, String folded) {
    int added =
        handle
            .createUpdate(
                """
                INSERT INTO instructor (id, name, folded, password_hash)
                SELECT :id, :name, :folded, :hash
                WHERE NOT EXISTS (SELECT 1 FROM instructor)
                """)
            .bind("id", account.id())
            .bind("name", account.name())
            .bind("folded", folded)
            .bind("hash", account.passwordHash())
            .execute();
    if (added == 1) {
      handle
          .createUpdate("UPDATE school_class SET instructor = :id WHERE instructor IS NULL")
          .bind("id", account.id())
          .execute();
    }
    return added == 1;
  }

  static void insert(Handle handle, InstructorAccount account, String folded) {
    handle
        .createUpdate(
            """
            INSERT INTO instructor (id, name, folded, password_hash)
            VALUES (:id, :name, :folded, :hash)
            """)
        .bind("id", account.id())
        .bind("name", account.name())
        .bind("folded", folded)
        .bind("hash", account.passwordHash())
        .execute();
  }

  @Override
  public List<InstructorAccount> all() {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT id, name, password_hash FROM instructor ORDER BY folded")
                .map(InstructorTable::read)
                .list());
  }

  private static InstructorAccount read(ResultSet row, StatementContext context)
      throws SQLException {
    return new InstructorAccount(
        row.getString("id"), row.getString("name"), row.getString("password_hash"));
  }

  @Override
  public Optional<InstructorAccount> byName(String folded) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    "SELECT id, name, password_hash FROM instructor WHERE folded = :folded")
                .bind("folded", folded)
                .map(InstructorTable::read)
                .findOne());
  }

  @Override
  public void changePassword(String id, String passwordHash) {
    access.write(
        handle ->
            handle
                .createUpdate("UPDATE instructor SET password_hash = :hash WHERE id = :id")
                .bind("hash", passwordHash)
                .bind("id", id)
                .execute());
  }
}
