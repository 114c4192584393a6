package withy.standard.marks;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Published tables of marks; the first line of each file names the documents. */
final class Tables {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private Tables() {}

  static List<CSVRecord> of(String file) {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(Tables.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
