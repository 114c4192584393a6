package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.mark.Practice;
import withy.usecase.Issue;
import withy.usecase.IssuedItems;

/** Keeps which items were issued. */
final class IssuedItemTable implements IssuedItems {
  /** What clashed may have been withdrawn before it was looked for, though hardly every time. */
  private static final int ATTEMPTS = 5;

  private final Access access;

  IssuedItemTable(Access access) {
    this.access = access;
  }

  @Override
  public Issue add(Issue issue) {
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      if (Clash.free(access, handle -> insert(handle, issue))) {
        return issue;
      }
      Optional<Issue> first = at(issue.learner(), issue.assignment(), issue.position());
      if (first.isPresent()) {
        return first.get();
      }
    }
    throw new IllegalStateException("neither stored nor found: item " + issue.position());
  }

  private static void insert(Handle handle, Issue issue) {
    handle
        .createUpdate(
            """
            INSERT INTO issued_item (id, learner, assignment, position, practice, concept, seed,
              item_index, generator_version, choices, issued_at)
            VALUES (:id, :learner, :assignment, :position, :practice, :concept, :seed,
              :index, :version, :choices, :issuedAt)
            """)
        .bind("id", issue.id())
        .bind("learner", issue.learner())
        .bind("assignment", issue.assignment())
        .bind("position", issue.position())
        .bind("practice", issue.practice().id())
        .bind("concept", issue.concept().id())
        .bind("seed", issue.seed())
        .bind("index", issue.index())
        .bind("version", issue.generatorVersion())
        .bind("choices", Words.ofChoices(issue.choices()))
        .bind("issuedAt", issue.issuedAt())
        .execute();
  }

  private Optional<Issue> at(String learner, String assignment, int position) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT * FROM issued_item WHERE learner = :learner
                    AND assignment = :assignment AND position = :position
                    """)
                .bind("learner", learner)
                .bind("assignment", assignment)
                .bind("position", position)
                .map(IssuedItemTable::read)
                .findOne());
  }

  @Override
  public Optional<Issue> find(String id) {
    return access.read(
        handle ->
            handle
                .createQuery("SELECT * FROM issued_item WHERE id = :id")
                .bind("id", id)
                .map(IssuedItemTable::read)
                .findOne());
  }

  @Override
  public Optional<Issue> open(String learner, String assignment) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT * FROM issued_item i
                    WHERE i.learner = :learner AND i.assignment = :assignment
                    AND NOT EXISTS (SELECT 1 FROM response r WHERE r.item = i.id)
                    ORDER BY i.position LIMIT 1
                    """)
                .bind("learner", learner)
                .bind("assignment", assignment)
                .map(IssuedItemTable::read)
                .findOne());
  }

  /** A response stored at the same moment keeps its item by the foreign key. */
  @Override
  public List<Concept> concepts(String learner, String assignment) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT concept FROM issued_item
                    WHERE learner = :learner AND assignment = :assignment ORDER BY position
                    """)
                .bind("learner", learner)
                .bind("assignment", assignment)
                .map((row, context) -> Term.parse(Concept.class, row.getString("concept")))
                .list());
  }

  @Override
  public void withdraw(String id) {
    Clash.free(
        access,
        handle ->
            handle
                .createUpdate(
                    """
                    DELETE FROM issued_item WHERE id = :id
                    AND NOT EXISTS (SELECT 1 FROM response WHERE item = :id)
                    """)
                .bind("id", id)
                .execute());
  }

  private static Issue read(ResultSet row, StatementContext context) throws SQLException {
    return new Issue(
        row.getString("id"),
        row.getString("learner"),
        row.getString("assignment"),
        row.getInt("position"),
        Practice.parse(row.getString("practice")),
        Term.parse(Concept.class, row.getString("concept")),
        row.getLong("seed"),
        row.getInt("item_index"),
        row.getInt("generator_version"),
        Words.readChoices(row.getString("choices")),
        Moments.read(row, "issued_at"));
  }
}
