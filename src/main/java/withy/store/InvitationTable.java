package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import withy.usecase.InstructorAccount;
import withy.usecase.Invitation;
import withy.usecase.Invitations;

/** Keeps invitations. */
final class InvitationTable implements Invitations {
  private final Access access;

  InvitationTable(Access access) {
    this.access = access;
  }

  @Override
  public void add(Invitation added, String digest) {
    access.write(
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO invitation (id, digest, instructor, made_at, expires_at)
                    VALUES (:id, :digest, :instructor, :madeAt, :expiresAt)
                    """)
                .bind("id", added.id())
                .bind("digest", digest)
                .bind("instructor", added.instructor())
                .bind("madeAt", added.madeAt())
                .bind("expiresAt", added.expiresAt())
                .execute());
  }

  @Override
  public Optional<Invitation> byCode(String digest) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM invitation WHERE digest = :digest")
                .bind("digest", digest)
                .map(InvitationTable::read)
                .findOne());
  }

  @Override
  public List<Invitation> of(String instructor) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT * FROM invitation WHERE instructor = :instructor
                    ORDER BY made_at DESC, id
                    """)
                .bind("instructor", instructor)
                .map(InvitationTable::read)
                .list());
  }

  private static Invitation read(ResultSet row, StatementContext context) throws SQLException {
    return new Invitation(
        row.getString("id"),
        row.getString("instructor"),
        Moments.read(row, "made_at"),
        Moments.read(row, "expires_at"));
  }

  @Override
  public void remove(String id) {
    access.write(handle -> removed(handle, id));
  }

  private static boolean removed(Handle handle, String id) {
    return handle.createUpdate("DELETE FROM invitation WHERE id = :id").bind("id", id).execute()
        == 1;
  }

  @Override
  public void removeExpired(Instant at) {
    access.write(
        handle ->
            handle
                .createUpdate("DELETE FROM invitation WHERE expires_at <= :at")
                .bind("at", at)
                .execute());
  }

  @Override
  public Outcome take(Invitation invitation, InstructorAccount account, String folded) {
    return access.writeAndTell(
        handle -> {
          if (!removed(handle, invitation.id())) {
            return Outcome.GONE;
          }
          if (Clash.free(handle, each -> InstructorTable.insert(each, account, folded))) {
            return Outcome.JOINED;
          }
          handle.rollback();
          return Outcome.NAME_TAKEN;
        });
  }
}
