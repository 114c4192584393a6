package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import withy.usecase.Caller;
import withy.usecase.InstructorCaller;
import withy.usecase.LearnerCaller;
import withy.usecase.SessionRecord;
import withy.usecase.Sessions;

/** Keeps sessions. */
final class SessionTable implements Sessions {
  private final Access access;

  SessionTable(Access access) {
    this.access = access;
  }

  @Override
  public void add(SessionRecord session) {
    Caller caller = session.caller();
    access.write(
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO open_session (digest, instructor, learner, opened_at, used_at)
                    VALUES (:digest, :instructor, :learner, :openedAt, :usedAt)
                    """)
                .bind("digest", session.digest())
                .bind("instructor", caller instanceof InstructorCaller ? caller.id() : null)
                .bind("learner", caller instanceof LearnerCaller ? caller.id() : null)
                .bind("openedAt", session.openedAt())
                .bind("usedAt", session.usedAt())
                .execute());
  }

  @Override
  public Optional<SessionRecord> find(String digest) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT s.digest, s.opened_at, s.used_at, s.instructor, i.name,
                      s.learner, l.nickname, l.school_class
                    FROM open_session s
                    LEFT JOIN instructor i ON i.id = s.instructor
                    LEFT JOIN learner l ON l.id = s.learner
                    WHERE s.digest = :digest
                    """)
                .bind("digest", digest)
                .map(SessionTable::read)
                .findOne());
  }

  private static SessionRecord read(ResultSet row, StatementContext context) throws SQLException {
    return new SessionRecord(
        row.getString("digest"),
        caller(row),
        Moments.read(row, "opened_at"),
        Moments.read(row, "used_at"));
  }

  private static Caller caller(ResultSet row) throws SQLException {
    String instructor = row.getString("instructor");
    return instructor != null
        ? new InstructorCaller(instructor, row.getString("name"))
        : new LearnerCaller(
            row.getString("learner"), row.getString("school_class"), row.getString("nickname"));
  }

  @Override
  public void use(String digest, Instant when) {
    access.write(
        handle ->
            handle
                .createUpdate("UPDATE open_session SET used_at = :when WHERE digest = :digest")
                .bind("when", when)
                .bind("digest", digest)
                .execute());
  }

  @Override
  public void remove(String digest) {
    access.write(
        handle ->
            handle
                .createUpdate("DELETE FROM open_session WHERE digest = :digest")
                .bind("digest", digest)
                .execute());
  }

  @Override
  public void removeUnused(Instant instructorsBefore, Instant learnersBefore) {
    access.write(
        handle ->
            handle
                .createUpdate(
                    """
                    DELETE FROM open_session
                    WHERE instructor IS NOT NULL AND used_at < :instructors
                    OR learner IS NOT NULL AND used_at < :learners
                    """)
                .bind("instructors", instructorsBefore)
                .bind("learners", learnersBefore)
                .execute());
  }
}
