package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import withy.usecase.Learner;
import withy.usecase.Learners;

/** Keeps learners. */
final class LearnerTable implements Learners {
  private final Access access;

  LearnerTable(Access access) {
    this.access = access;
  }

  @Override
  public Added add(Learner learner, String folded, String returnDigest, int most) {
    return access.writeAndTell(
        handle -> {
          if (count(handle, learner.schoolClass()) >= most) {
            return Added.CLASS_FULL;
          }
          if (!Clash.free(handle, free -> insert(free, learner, folded, returnDigest))) {
            return Added.NICKNAME_TAKEN;
          }
          SumsTable.begin(handle, learner);
          return Added.ADDED;
        });
  }

  /**
   * Learners of a class, to which nobody else is added meanwhile: one transaction writes at a time.
   */
  private static int count(Handle handle, String schoolClass) {
    return handle
        .createQuery("SELECT COUNT(*) FROM learner WHERE school_class = :class")
        .bind("class", schoolClass)
        .mapTo(Integer.class)
        .one();
  }

  private static void insert(Handle handle, Learner learner, String folded, String returnDigest) {
    handle
        .createUpdate(
            """
            INSERT INTO learner (id, school_class, nickname, folded, return_digest)
            VALUES (:id, :class, :nickname, :folded, :digest)
            """)
        .bind("id", learner.id())
        .bind("class", learner.schoolClass())
        .bind("nickname", learner.nickname())
        .bind("folded", folded)
        .bind("digest", returnDigest)
        .execute();
  }

  @Override
  public Optional<Learner> find(String id) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM learner WHERE id = :id")
                .bind("id", id)
                .map(LearnerTable::read)
                .findOne());
  }

  @Override
  public Optional<Learner> byReturnCode(String returnDigest) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM learner WHERE return_digest = :digest")
                .bind("digest", returnDigest)
                .map(LearnerTable::read)
                .findOne());
  }

  @Override
  public List<Learner> of(String schoolClass) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM learner WHERE school_class = :class ORDER BY folded")
                .bind("class", schoolClass)
                .map(LearnerTable::read)
                .list());
  }

  private static Learner read(ResultSet row, StatementContext context) throws SQLException {
    return new Learner(
        row.getString("id"), row.getString("school_class"), row.getString("nickname"));
  }
}
