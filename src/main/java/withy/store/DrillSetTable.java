package withy.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillSet;
import withy.usecase.DrillSetFiles;
import withy.usecase.KeptDrillSet;
import withy.usecase.KeptDrillSets;

/** Keeps drill sets. */
final class DrillSetTable implements KeptDrillSets {
  private static final String NEWEST_FIRST = " ORDER BY kept_at DESC, id";

  private final Access access;
  private final DrillSetTexts texts;

  DrillSetTable(Access access, WaterTable waters, DrillSetFiles files) {
    this.access = access;
    this.texts = new DrillSetTexts(waters, files);
  }

  private record Row(
      String id,
      String instructor,
      String text,
      @Nullable String waterFile,
      boolean shared,
      Instant keptAt) {
    static Row read(ResultSet row, StatementContext context) throws SQLException {
      return new Row(
          row.getString("id"),
          row.getString("instructor"),
          row.getString("text"),
          row.getString("water_file"),
          row.getBoolean("shared"),
          Moments.read(row, "kept_at"));
    }
  }

  @Override
  public void add(KeptDrillSet added) {
    access.write(
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO drill_set (id, instructor, text, water_file, shared, kept_at)
                    VALUES (:id, :instructor, :text, :waterFile, :shared, :keptAt)
                    """)
                .bind("id", added.id())
                .bind("instructor", added.instructor())
                .bind("text", texts.write(added.set()))
                .bind("waterFile", texts.water(handle, added.set()))
                .bind("shared", added.shared())
                .bind("keptAt", added.keptAt())
                .execute());
  }

  @Override
  public void change(KeptDrillSet changed) {
    access.write(
        handle ->
            handle
                .createUpdate("UPDATE drill_set SET text = :text, shared = :shared WHERE id = :id")
                .bind("id", changed.id())
                .bind("text", texts.write(changed.set()))
                .bind("shared", changed.shared())
                .execute());
  }

  @Override
  public Optional<KeptDrillSet> find(String id) {
    Optional<Row> found = access.read(handle -> row(handle, id));
    return found.map(this::whole);
  }

  private static Optional<Row> row(Handle handle, String id) {
    return handle
        .createQuery("SELECT * FROM drill_set WHERE id = :id")
        .bind("id", id)
        .map(Row::read)
        .findOne();
  }

  @Override
  public List<KeptDrillSet> of(String instructor) {
    return list("instructor = :instructor", instructor);
  }

  @Override
  public List<KeptDrillSet> sharedWith(String instructor) {
    return list("shared AND instructor <> :instructor", instructor);
  }

  private List<KeptDrillSet> list(String which, String instructor) {
    List<Row> found =
        access.read(
            handle ->
                handle
                    .createQuery("SELECT * FROM drill_set WHERE " + which + NEWEST_FIRST)
                    .bind("instructor", instructor)
                    .map(Row::read)
                    .list());
    return found.stream().map(this::whole).toList();
  }

  /** The water is read once the row is, since that may need a connection of its own. */
  private KeptDrillSet whole(Row row) {
    DrillSet set = texts.read(row.text(), row.waterFile());
    return new KeptDrillSet(row.id(), row.instructor(), set, row.shared(), row.keptAt());
  }

  @Override
  public Optional<String> water(String id) {
    return access.read(
        handle ->
            row(handle, id)
                .flatMap(found -> Optional.ofNullable(found.waterFile()))
                .map(digest -> WaterTable.text(handle, digest)));
  }

  @Override
  public void remove(String id) {
    access.write(
        handle -> {
          Optional<Row> found = row(handle, id);
          handle.createUpdate("DELETE FROM drill_set WHERE id = :id").bind("id", id).execute();
          found
              .flatMap(gone -> Optional.ofNullable(gone.waterFile()))
              .ifPresent(digest -> WaterTable.forget(handle, digest));
        });
  }
}
