package withy.exchange;

import static java.nio.charset.CodingErrorAction.REPORT;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * Responses as a file: RFC 4180 with a header row, UTF-8, one response a row.
 *
 * <p>Several concepts in one cell are separated by a space, the options offered likewise, each as
 * {@code value=misconception}. A text that a spreadsheet would take for a formula has a single
 * quote in front ({@link FormulaGuard}).
 */
public final class ResponsesCsv {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private ResponsesCsv() {}

  /**
   * Writes the header and a row for each response, lines ended by CR LF; leaves the output open.
   */
  public static void write(Iterable<Response> responses, Appendable out) throws IOException {
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord(Arrays.stream(ResponseColumn.values()).map(ResponseColumn::title));
    for (Response response : responses) {
      printer.printRecord(cells(response));
    }
  }

  /**
   * Reads responses in UTF-8, with or without a byte order mark, lines ended by LF or CR LF, the
   * columns in any order and others among them; blank lines are passed over.
   *
   * @throws MalformedResponses at the first row that cannot be read or contradicts itself
   */
  public static List<Response> read(InputStream in) throws IOException, MalformedResponses {
    List<Response> responses = new ArrayList<>();
    long row = 0;
    try {
      Iterator<CSVRecord> records = records(in);
      ResponseRow below = header(records);
      for (row = 1; records.hasNext(); row++) {
        CSVRecord next = records.next();
        if (!isBlank(next)) {
          responses.add(below.read(next));
        }
      }
    } catch (UncheckedIOException e) {
      throw unreadable(row + 1, Objects.requireNonNull(e.getCause()));
    } catch (CharacterCodingException e) {
      throw unreadable(row + 1, e);
    }
    return responses;
  }

  private static Iterator<CSVRecord> records(InputStream in) throws IOException {
    var utf8 = StandardCharsets.UTF_8.newDecoder();
    utf8.onMalformedInput(REPORT).onUnmappableCharacter(REPORT);
    Reader text = new BufferedReader(new InputStreamReader(in, utf8));
    skipByteOrderMark(text);
    return CSVFormat.RFC4180.parse(text).iterator();
  }

  private static ResponseRow header(Iterator<CSVRecord> records) throws MalformedResponses {
    if (!records.hasNext()) {
      throw new MalformedResponses(1, null, "no-header", "");
    }
    return ResponseRow.below(records.next());
  }

  private static List<Object> cells(Response response) {
    return List.of(
        FormulaGuard.put(response.learner()),
        FormulaGuard.put(response.assignment()),
        FormulaGuard.put(response.item()),
        FormulaGuard.put(response.form()),
        FormulaGuard.put(response.practice()),
        FormulaGuard.put(String.join(" ", response.concepts())),
        FormulaGuard.put(response.key()),
        FormulaGuard.put(Objects.requireNonNullElse(response.option(), "")),
        FormulaGuard.put(Objects.requireNonNullElse(response.misconception(), "")),
        FormulaGuard.put(offered(response)),
        response.correct(),
        response.shownMillis(),
        response.answeredAt(),
        response.rapid());
  }

  private static String offered(Response response) {
    return response.offered().stream().map(ResponsesCsv::pair).collect(Collectors.joining(" "));
  }

  private static String pair(OfferedOption option) {
    return option.value() + "=" + Objects.requireNonNullElse(option.misconception(), "");
  }

  private static MalformedResponses unreadable(long row, IOException cause) throws IOException {
    if (cause instanceof CharacterCodingException) {
      return new MalformedResponses(row, null, "no-utf-8", "");
    }
    if (cause instanceof CSVException) {
      return new MalformedResponses(row, null, "no-csv", "");
    }
    throw cause;
  }

  private static boolean isBlank(CSVRecord row) {
    return row.size() == 1 && row.get(0).isBlank();
  }

  private static void skipByteOrderMark(Reader text) throws IOException {
    text.mark(1);
    if (text.read() != BYTE_ORDER_MARK) {
      text.reset();
    }
  }
}
