package withy.standard.lightlists;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import withy.core.light.LightColour;
import withy.core.light.LightTimeline;
import withy.core.light.Phase;

/** Rows of published lights, and their sequences read apart from the parser that is tested. */
final class Rows {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private Rows() {}

  static Stream<CSVRecord> of(String file) {
    try (InputStreamReader reader =
        new InputStreamReader(
            Objects.requireNonNull(Rows.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@code 00.3+(00.7)} in these colours by turns. */
  static LightTimeline timeline(String sequence, List<LightColour> colours) {
    List<Phase> phases = new ArrayList<>();
    int lights = 0;
    for (String part : sequence.split("\\+", -1)) {
      String seconds = part.replace("(", "").replace(")", "");
      int millis = (int) Math.round(Double.parseDouble(seconds) * 1000);
      boolean dark = part.startsWith("(");
      phases.add(
          dark ? Phase.eclipse(millis) : Phase.light(colours.get(lights % colours.size()), millis));
      lights += dark ? 0 : 1;
    }
    return new LightTimeline(phases, false);
  }

  /** The same sequence as a list of lights words it. */
  static String worded(String sequence) {
    StringBuilder worded = new StringBuilder();
    for (String part : sequence.split("\\+", -1)) {
      String seconds = part.replace("(", "").replace(")", "");
      worded.append(part.startsWith("(") ? ", ec. " : "; fl. ").append(seconds).append('s');
    }
    return worded.toString();
  }
}
