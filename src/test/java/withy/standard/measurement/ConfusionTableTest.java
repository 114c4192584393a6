package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.measurement.ConfusionTable;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.MarkPair;
import withy.core.measurement.PairSums;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/** The choice model of Luce 1963 on a table of four marks; the file says where. */
class ConfusionTableTest {
  private static final String FILE = "confusion.csv";
  private static final int[][] COUNTS = counts();
  private static final ConfusionTable TABLE = ConfusionTable.of(LearnerSums.of(responses()));

  private static int[][] counts() {
    String matrix = Figures.value(FILE, "matrix rows=true mark", "value");
    return Arrays.stream(matrix.replaceAll("^\\[\\[|]]$", "").split("],\\["))
        .map(row -> Arrays.stream(row.split(",")).mapToInt(Integer::parseInt).toArray())
        .toArray(int[][]::new);
  }

  static List<CSVRecord> similarities() {
    return Figures.of(FILE).stream().filter(row -> row.get("quantity").startsWith("eta")).toList();
  }

  @ParameterizedTest
  @MethodSource("similarities")
  void findsMarksAsAlikeAsPublished(CSVRecord row) {
    String pair = row.get("quantity");
    int one = pair.charAt(3) - '0';
    int other = pair.charAt(4) - '0';
    assertThat(TABLE.similarity(mark(one), mark(other)))
        .isCloseTo(Figures.number(row, "value"), within(1e-9))
        .isEqualTo(TABLE.similarity(mark(other), mark(one)));
  }

  @Test
  void countsEveryCellAndWhatWasKnown() {
    int known = 0;
    for (int shown = 0; shown < 4; shown++) {
      for (int answered = 0; answered < 4; answered++) {
        assertThat(cell(shown, answered).times()).isEqualTo(COUNTS[shown][answered]);
        assertThat(cell(shown, answered).offered()).isEqualTo(50);
      }
      known += cell(shown, shown).times();
    }
    double accuracy = Double.parseDouble(Figures.value(FILE, "accuracy", "value"));
    assertThat(known / 200.0).isCloseTo(accuracy, within(1e-12));
  }

  @Test
  void namesTheMostAlikeFirst() {
    List<ConfusionTable.Alike> alike = TABLE.alike();
    assertThat(alike).hasSize(6);
    assertThat(alike.get(0).one()).isEqualTo("mark-0");
    assertThat(alike.get(0).other()).isEqualTo("mark-1");
    assertThat(alike.get(0).similarity()).isCloseTo(0.2582, within(5e-5));
  }

  /** A liking for one answer multiplies a column, which the model takes out again. */
  @Test
  void isFreeOfALikingForOneAnswer() {
    TreeMap<MarkPair, PairSums> liked = new TreeMap<>();
    TABLE
        .cells()
        .forEach(
            (pair, each) -> {
              int times = each.times() * (pair.answered().equals("mark-1") ? 3 : 1);
              int right = each.right() * (pair.shown().equals("mark-1") ? 3 : 1);
              liked.put(pair, new PairSums(each.offered(), times, right, 0));
            });
    assertThat(new ConfusionTable(liked).similarity("mark-0", "mark-1"))
        .isCloseTo(TABLE.similarity("mark-0", "mark-1"), within(1e-12));
  }

  /** Where the other mark did not stand among the options, nothing is said of the two. */
  @Test
  void countsOnlyWhereTheAnswerWasOffered() {
    List<OfferedOption> two = List.of(option(0, 0), option(2, 0));
    List<Response> more = new ArrayList<>(responses());
    IntStream.range(0, 30).forEach(i -> more.add(response("two-" + i, 0, i < 9 ? 0 : 2, two)));
    ConfusionTable table = ConfusionTable.of(LearnerSums.of(more));
    assertThat(cell(table, 0, 1)).isEqualTo(cell(0, 1));
    assertThat(cell(table, 0, 2).offered()).isEqualTo(80);
    assertThat(cell(table, 0, 0).offered()).isEqualTo(80);
    assertThat(table.similarity("mark-0", "mark-1"))
        .isEqualTo(TABLE.similarity("mark-0", "mark-1"));
    assertThat(table.similarity("mark-0", "mark-7")).isNaN();
  }

  private static PairSums cell(int shown, int answered) {
    return cell(TABLE, shown, answered);
  }

  private static PairSums cell(ConfusionTable table, int shown, int answered) {
    MarkPair pair = new MarkPair(mark(shown), mark(answered));
    return Objects.requireNonNull(table.cells().get(pair));
  }

  private static String mark(int number) {
    return "mark-" + number;
  }

  private static OfferedOption option(int number, int key) {
    return new OfferedOption(mark(number), number == key ? null : OfferedOption.UNEXPLAINED);
  }

  private static List<Response> responses() {
    List<Response> responses = new ArrayList<>();
    for (int shown = 0; shown < 4; shown++) {
      int key = shown;
      List<OfferedOption> offered =
          IntStream.range(0, 4).mapToObj(each -> option(each, key)).toList();
      for (int answered = 0; answered < 4; answered++) {
        for (int i = 0; i < COUNTS[shown][answered]; i++) {
          String item = shown + "-" + answered + "-" + i;
          responses.add(response(item, shown, answered, offered));
        }
      }
    }
    return responses;
  }

  private static Response response(
      String item, int shown, int answered, List<OfferedOption> offered) {
    boolean right = shown == answered;
    return new Response(
        "learner-" + item.hashCode() % 7,
        "a1",
        item,
        "identify",
        "iala-a",
        List.of("cardinal-identity"),
        mark(shown),
        mark(answered),
        right ? null : OfferedOption.UNEXPLAINED,
        offered,
        right,
        8_000,
        Instant.EPOCH);
  }
}
