package withy.standard.measurement;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Published figures; the first line of each file names the document. */
public final class Figures {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private Figures() {}

  public static List<CSVRecord> of(String file) {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(Figures.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** What stands beside the name of a quantity; the first where it stands there twice. */
  public static String value(String file, String quantity, String column) {
    return of(file).stream()
        .filter(row -> row.get("quantity").strip().equals(quantity))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(file + " has no " + quantity))
        .get(column);
  }
}
