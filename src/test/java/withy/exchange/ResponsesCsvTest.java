package withy.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static withy.fixture.Answer.by;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import withy.core.response.OfferedOption;
import withy.core.response.Response;
import withy.core.response.ResponseFlaw;
import withy.wording.Wording;

class ResponsesCsvTest {
  private static final String HEADER =
      "learner,assignment,item,form,practice,concepts,key,option,misconception,offered,correct,"
          + "shownMs,answeredAt";
  private static final String ROW =
      "Ada,a1,q1,side,iala-a,lateral-side region,port,starboard,region-swapped,"
          + "port= starboard=region-swapped,false,4200,2026-05-01T09:30:00Z";

  @Test
  void writesTheColumnsInTheirOrderWithCarriageReturns() throws IOException {
    Response response = by("Åse, \"the first\"").notSure();
    assertThat(written(List.of(response)))
        .isEqualTo(
            HEADER
                + ",rapid\r\n\"Åse, \"\"the first\"\"\",a1,q1,side,iala-a,lateral-side,"
                + "leave-to-starboard,,,leave-to-starboard= leave-to-port=region-swapped,false,"
                + "4200,2026-05-01T09:00:00Z,false\r\n");
  }

  @Test
  void readsAndWritesWhichWereGivenRapidly() throws Exception {
    String marked =
        HEADER + ",rapid\r\n" + ROW + ",true\r\n" + ROW.replace("q1", "q2") + ",false\r\n";
    List<Response> responses = read(marked);
    assertThat(responses).extracting(Response::rapid).containsExactly(true, false);
    assertThat(written(responses)).isEqualTo(marked);
    assertThat(read(HEADER + "\n" + ROW + "\n").get(0).rapid()).isFalse();
  }

  @Test
  void readsARow() throws Exception {
    Response response = read(HEADER + "\n" + ROW + "\n").get(0);
    assertThat(response.concepts()).containsExactly("lateral-side", "region");
    assertThat(response.misconception()).isEqualTo("region-swapped");
    assertThat(response.offered())
        .containsExactly(
            new OfferedOption("port", null), new OfferedOption("starboard", "region-swapped"));
    assertThat(response.answeredAt()).isEqualTo("2026-05-01T09:30:00Z");
  }

  @Test
  void readsTheSameWithMarkOtherLineEndsColumnsAndOrder() throws Exception {
    List<Response> plain = read(HEADER + "\r\n" + ROW + "\r\n");
    assertThat(read("\uFEFF" + HEADER + "\n" + ROW)).isEqualTo(plain);
    assertThat(read(HEADER + ",note\n\n" + ROW + ",late\n\n")).isEqualTo(plain);
    assertThat(read("item," + HEADER.replace("item,", "") + "\nq1," + ROW.replace(",q1,", ",")))
        .isEqualTo(plain);
  }

  @Test
  void readsTimesOfAnyOffsetAndTruthInCapitals() throws Exception {
    String row = ROW.replace("09:30:00Z", "11:30:00.250+02:00").replace("false", "FALSE");
    assertThat(read(HEADER + "\n" + row).get(0).answeredAt()).isEqualTo("2026-05-01T09:30:00.250Z");
  }

  @Test
  void readsAHeaderAloneAsNoResponses() throws Exception {
    assertThat(read(HEADER + "\r\n")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Ada|' '|learner|no-learner",
        "q1|''|item|no-item",
        "side|''|form|no-form",
        "lateral-side region|''|concepts|no-concept",
        ",port,|,,|key|no-key",
        ",port,|,astern,|key|key-not-offered",
        ",starboard,|,astern,|option|option-not-offered",
        ",region-swapped,|,direction-ignored,|misconception|misconception-of-another-option",
        "port= starboard|port starboard|offered|malformed-option",
        "port= starboard|port= port|offered|option-twice",
        "false|true|correct|correct-without-key",
        "false|no|correct|no-truth-value",
        "4200|-1|shownMs|negative-time",
        "4200|4.2|shownMs|no-whole-number",
        "4200|99999999999999999999|shownMs|no-whole-number",
        "2026-05-01T09:30:00Z|2026-05-01 09:30|answeredAt|no-time",
        "2026-05-01T09:30:00Z|2026-02-30T09:30:00Z|answeredAt|no-time",
        "2026-05-01T09:30:00Z|2026-05-01T09:30:00|answeredAt|no-time"
      })
  void saysWhichCellToMend(String good, String bad, String column, String problem) {
    String row = ROW.replace(good, bad);
    assertThat(row).isNotEqualTo(ROW);
    MalformedResponses refused = refused(HEADER + "\n" + ROW.replace("q1", "q0") + "\n" + row);
    assertThat(refused.row()).isEqualTo(3);
    assertThat(refused.column()).isEqualTo(column);
    assertThat(refused).hasMessageContaining(problem);
  }

  @Test
  void saysItInOneSentence() {
    MalformedResponses refused =
        refused(HEADER + "\n" + ROW.replace("2026-05-01T09:30:00Z", "\"1 May\n2026\""));
    assertThat(refused.sentence(Wording.of(Locale.ENGLISH)))
        .startsWith("row 2, column answeredAt: not a date and time")
        .endsWith("1 May 2026")
        .doesNotContain("\n");
  }

  @Test
  void cutsALongCellInTheSentence() {
    String sentence =
        refused(HEADER + "\n" + ROW.replace("4200", "9".repeat(500)))
            .sentence(Wording.of(Locale.ENGLISH));
    assertThat(sentence).hasSizeLessThan(160).endsWith("9…");
  }

  @Test
  void hasASentenceForEveryFlaw() {
    for (ResponseFlaw flaw : ResponseFlaw.values()) {
      String problem = flaw.name().toLowerCase(Locale.ROOT).replace('_', '-');
      var refused = new MalformedResponses(2, ResponseColumn.of(flaw).title(), problem, "{0}'x");
      assertThat(refused.sentence(Wording.of(Locale.ENGLISH))).startsWith("row 2, column ");
    }
  }

  @Test
  void refusesAFileThatIsNone() {
    assertThat(refused("").sentence(Wording.of(Locale.ENGLISH)))
        .startsWith("row 1: the file is empty");
    assertThat(refused(HEADER.replace("key,", "")).column()).isEqualTo("key");
    assertThat(refused(HEADER + ",item")).hasMessageContaining("column-twice");
    assertThat(refused(HEADER + "\n" + ROW + ",more")).hasMessageContaining("cells");
    assertThat(refused(HEADER + "\n" + ROW + "\n\"open")).hasMessageContaining("row 3");
    assertThat(refused(HEADER + "\n\"a\"b," + ROW)).hasMessageContaining("no-csv");
  }

  @Test
  void refusesWhatIsNotUtf8() {
    byte[] latin =
        (HEADER + "\n" + ROW.replace("Ada", "Åse")).getBytes(StandardCharsets.ISO_8859_1);
    assertThat(refused(latin)).hasMessageContaining("no-utf-8");
    assertThat(refused(new byte[] {(byte) 0xFF, (byte) 0xFE, 'l', 0}))
        .hasMessageContaining("no-utf-8");
  }

  @Property(tries = 300)
  void readsBackWhatItWrote(@ForAll("responses") List<Response> responses) throws Exception {
    assertThat(read(written(responses))).isEqualTo(responses);
  }

  @Property(tries = 300)
  void writesNoTextThatASpreadsheetTakesForAFormula(@ForAll("responses") List<Response> responses)
      throws IOException {
    for (CSVRecord row : CSVFormat.RFC4180.parse(new StringReader(written(responses)))) {
      for (String cell : row.stream().limit(10).toList()) {
        assertThat(cell).doesNotContainPattern("^[=+@\t\r\n\0＝＋－＠-]");
      }
    }
  }

  @Provide
  Arbitrary<List<Response>> responses() {
    Arbitrary<String> names =
        Arbitraries.strings()
            .withChars("=+-@\t\r\n'\",; aÅ旗＝\uFEFF")
            .ofMaxLength(5)
            .map(text -> text + "x");
    Arbitrary<String> words =
        Arbitraries.strings().withChars("+-@'\",ab＝").ofMinLength(1).ofMaxLength(4);
    Arbitrary<List<String>> options = words.list().uniqueElements().ofMinSize(2).ofMaxSize(4);
    Arbitrary<Integer> chosen = Arbitraries.integers().between(-1, 3);
    Arbitrary<Long> times = Arbitraries.longs().between(0, 4_000_000_000_000L);
    return Combinators.combine(
            names, names, words.list().ofMinSize(1).ofMaxSize(3), options, chosen, times)
        .as(ResponsesCsvTest::response)
        .list()
        .ofMaxSize(5);
  }

  private static Response response(
      String learner, String item, List<String> words, List<String> values, int chosen, long time) {
    List<OfferedOption> offered = new ArrayList<>();
    for (String value : values) {
      offered.add(new OfferedOption(value, offered.isEmpty() ? null : words.get(0)));
    }
    OfferedOption option = chosen < 0 ? null : offered.get(chosen % offered.size());
    return new Response(
        learner,
        item,
        item,
        words.get(0),
        "",
        words,
        values.get(0),
        option == null ? null : option.value(),
        option == null ? null : option.misconception(),
        offered,
        option == offered.get(0),
        time,
        Instant.ofEpochMilli(time));
  }

  private static String written(List<Response> responses) throws IOException {
    StringBuilder out = new StringBuilder();
    ResponsesCsv.write(responses, out);
    return out.toString();
  }

  private static List<Response> read(String text) throws IOException, MalformedResponses {
    return ResponsesCsv.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static MalformedResponses refused(String text) {
    return refused(text.getBytes(StandardCharsets.UTF_8));
  }

  private static MalformedResponses refused(byte[] bytes) {
    MalformedResponses refused =
        catchThrowableOfType(
            MalformedResponses.class, () -> ResponsesCsv.read(new ByteArrayInputStream(bytes)));
    assertThat(refused).isNotNull();
    return refused;
  }
}
