package withy.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.usecase.KeptWater;
import withy.usecase.Secrets;
import withy.usecase.UnfitWater;
import withy.usecase.WaterFiles;
import withy.usecase.Waters;

/** Keeps waters, and for each drill the water in which it was assigned. */
final class WaterTable implements Waters {
  /** Waters that are held read; one takes about 60 KB. */
  private static final int READ = 64;

  private final Access access;
  private final WaterFiles files;
  private final Cache<String, SurveyedWater> read = Caffeine.newBuilder().maximumSize(READ).build();

  WaterTable(Access access, WaterFiles files) {
    this.access = access;
    this.files = files;
  }

  private record Row(String id, String instructor, String file, Instant importedAt) {
    static Row read(ResultSet row, StatementContext context) throws SQLException {
      return new Row(
          row.getString("id"),
          row.getString("instructor"),
          row.getString("file"),
          Moments.read(row, "imported_at"));
    }
  }

  private record File(String water, String title, String text) {
    static File read(ResultSet row, StatementContext context) throws SQLException {
      return new File(row.getString("water"), row.getString("title"), row.getString("text"));
    }

    String digest() {
      return Secrets.digest(water + "\n" + title + "\n" + text);
    }
  }

  @Override
  public void add(KeptWater added) {
    access.write(
        handle -> {
          String digest = keep(handle, new File(added.id(), added.title(), added.text()));
          handle
              .createUpdate(
                  """
                  INSERT INTO water (id, instructor, file, imported_at)
                  VALUES (:id, :instructor, :file, :importedAt)
                  """)
              .bind("id", added.id())
              .bind("instructor", added.instructor())
              .bind("file", digest)
              .bind("importedAt", added.importedAt())
              .execute();
        });
  }

  private static String keep(Handle handle, File file) {
    String digest = file.digest();
    handle
        .createUpdate(
            """
            MERGE INTO water_file (digest, water, title, text) KEY (digest)
            VALUES (:digest, :water, :title, :text)
            """)
        .bind("digest", digest)
        .bind("water", file.water())
        .bind("title", file.title())
        .bind("text", file.text())
        .execute();
    return digest;
  }

  @Override
  public Optional<KeptWater> find(String id) {
    return access.read(handle -> row(handle, id).map(found -> kept(handle, found)));
  }

  private static Optional<Row> row(Handle handle, String id) {
    return handle
        .createQuery("SELECT * FROM water WHERE id = :id")
        .bind("id", id)
        .map(Row::read)
        .findOne();
  }

  @Override
  public List<KeptWater> of(String instructor) {
    return access.read(
        handle ->
            handle
                .createQuery(
                    """
                    SELECT * FROM water WHERE instructor = :instructor
                    ORDER BY imported_at DESC, id
                    """)
                .bind("instructor", instructor)
                .map(Row::read)
                .list()
                .stream()
                .map(each -> kept(handle, each))
                .toList());
  }

  private KeptWater kept(Handle handle, Row row) {
    File file = file(handle, row.file());
    return new KeptWater(water(row.file(), file), row.instructor(), file.text(), row.importedAt());
  }

  @Override
  public void remove(String id) {
    access.write(
        handle -> {
          Optional<Row> found = row(handle, id);
          handle.createUpdate("DELETE FROM water WHERE id = :id").bind("id", id).execute();
          found.ifPresent(gone -> forget(handle, gone.file()));
        });
  }

  /** Drops the copy of a water that nothing asks for any more. */
  static void forget(Handle handle, String digest) {
    handle
        .createUpdate(
            """
            DELETE FROM water_file WHERE digest = :digest
              AND NOT EXISTS (SELECT 1 FROM water WHERE file = :digest)
              AND NOT EXISTS (SELECT 1 FROM assignment WHERE water_file = :digest)
              AND NOT EXISTS (SELECT 1 FROM drill_set WHERE water_file = :digest)
              AND NOT EXISTS (SELECT 1 FROM course_water WHERE water_file = :digest)
              AND NOT EXISTS (SELECT 1 FROM course_session
                WHERE water_file = :digest OR set_water_file = :digest)
            """)
        .bind("digest", digest)
        .execute();
  }

  /**
   * Keeps what a drill is set in: the copy that there is of an imported water, whether or not it
   * was deleted since, or one of a water that comes with the program.
   *
   * @return the digest of the copy; null for generated waters
   */
  @Nullable String keptFor(Handle handle, @Nullable SurveyedWater water) {
    if (water == null) {
      return null;
    }
    Optional<Row> own = row(handle, water.id());
    if (own.isPresent()) {
      return own.get().file();
    }
    for (WaterFiles.Authored each : files.authored()) {
      if (each.id().equals(water.id())) {
        return keep(handle, new File(each.id(), water.title(), each.text()));
      }
    }
    return copyOf(handle, water.id())
        .orElseThrow(() -> new IllegalArgumentException(water.id() + " is not kept"));
  }

  /** An imported water has an id of its own and one file, so that its copies are all the same. */
  private static Optional<String> copyOf(Handle handle, String water) {
    return handle
        .createQuery("SELECT digest FROM water_file WHERE water = :water")
        .bind("water", water)
        .mapTo(String.class)
        .findFirst();
  }

  /** The text of a copy. */
  static String text(Handle handle, String digest) {
    return file(handle, digest).text();
  }

  /** The water of a copy; null for none. */
  @Nullable SurveyedWater water(@Nullable String digest) {
    if (digest == null) {
      return null;
    }
    SurveyedWater known = read.getIfPresent(digest);
    return known == null ? access.read(handle -> water(digest, file(handle, digest))) : known;
  }

  private static File file(Handle handle, String digest) {
    return handle
        .createQuery("SELECT * FROM water_file WHERE digest = :digest")
        .bind("digest", digest)
        .map(File::read)
        .one();
  }

  private SurveyedWater water(String digest, File file) {
    return read.get(
        digest,
        any -> {
          try {
            return files.read(file.water(), file.title(), file.text()).water();
          } catch (UnfitWater e) {
            throw new IllegalStateException("the kept water " + file.water() + " is unfit", e);
          }
        });
  }
}
