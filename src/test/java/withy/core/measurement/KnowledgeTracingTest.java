package withy.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.response.OfferedOption;
import withy.core.response.Response;
import withy.standard.measurement.Figures;

/**
 * Knowledge tracing: Corbett and Anderson 1995, User Modeling and User-Adapted Interaction 4:253.
 * It is what our states come to without misconceptions: "guesses" is then all that is not knowing.
 */
class KnowledgeTracingTest {
  private static final Offset<Double> TEN_DIGITS = within(1e-9);
  private static final String CONCEPT = "lateral-side";

  /** A worked course of answers; the parameters stand in the name of the last column. */
  private record Course(
      List<CSVRecord> rows,
      String after,
      double begun,
      double learning,
      double slip,
      double guess) {
    static Course of(String example) {
      List<CSVRecord> rows = Figures.of("bkt_" + example + ".csv");
      List<String> columns = rows.get(0).getParser().getHeaderNames();
      String after = columns.get(columns.size() - 1);
      double[] stated =
          Arrays.stream(after.replaceAll(".*=\\(|\\)", "").split(","))
              .mapToDouble(Double::parseDouble)
              .toArray();
      return new Course(rows, after, stated[0], stated[1], stated[2], stated[3]);
    }

    StateSums add(StateSums sums, CSVRecord row) {
      boolean right = row.get("correct").equals("1");
      return sums.plus(right ? 1 - slip : slip, right ? guess : 1 - guess, new TreeMap<>());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"A", "B", "C"})
  void tracesWhatIsKnownAnswerByAnswer(String example) {
    Course course = Course.of(example);
    StateSums sums = StateSums.none(course.learning());
    for (CSVRecord row : course.rows()) {
      assertThat(knows(course.begun(), course.learning(), sums))
          .isEqualTo(number(row, "P(L)_before"), TEN_DIGITS);
      sums = course.add(sums, row);
      assertThat(knows(course.begun(), course.learning(), sums))
          .isEqualTo(number(row, course.after()), TEN_DIGITS);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"A", "B", "C"})
  void weighsOneAnswerBeforeAnythingIsLearnt(String example) {
    Course course = Course.of(example);
    for (CSVRecord row : course.rows()) {
      StateSums one = course.add(StateSums.none(0), row);
      assertThat(knows(number(row, "P(L)_before"), 0, one))
          .isEqualTo(number(row, "P(L|obs)"), TEN_DIGITS);
    }
  }

  /** Slip .10 and a guess of .25 are those of our items of four options. */
  @Test
  void tracesTheThirdCourseByItsResponses() {
    Course course = Course.of("C");
    List<Response> answers = new ArrayList<>();
    for (CSVRecord row : course.rows()) {
      answers.add(response(row));
      LearnerState state = model(course.begun(), course.learning()).after("Ada", CONCEPT, answers);
      assertThat(state.knows()).isEqualTo(number(row, course.after()), TEN_DIGITS);
    }
  }

  /** How likely the right answer is, before it is given. */
  @Test
  void expectsTheRightAnswersOfTheThirdCourse() {
    double knowing = OptionChances.ofKnowing(OFFERED)[0];
    double guessing = OptionChances.ofGuessing(OFFERED)[0];
    for (CSVRecord row : Figures.of("bkt_C.csv")) {
      double knows = number(row, "P(L)_before");
      assertThat(knows * knowing + (1 - knows) * guessing)
          .isEqualTo(number(row, "P(correct)"), TEN_DIGITS);
    }
  }

  private static final List<OfferedOption> OFFERED =
      List.of(
          new OfferedOption("key", null),
          new OfferedOption("a", OfferedOption.UNEXPLAINED),
          new OfferedOption("b", OfferedOption.UNEXPLAINED),
          new OfferedOption("c", OfferedOption.UNEXPLAINED));

  private static LearnerModel model(double begun, double learning) {
    return new LearnerModel(Collections.emptyList(), List.of(begun, 1 - begun), learning);
  }

  private static double knows(double begun, double learning, StateSums sums) {
    return model(begun, learning).after("Ada", CONCEPT, sums).knows();
  }

  private static Response response(CSVRecord row) {
    boolean right = row.get("correct").equals("1");
    return new Response(
        "Ada",
        "a1",
        row.get("n"),
        "side",
        "iala-a",
        List.of(CONCEPT),
        "key",
        right ? "key" : "a",
        right ? null : OfferedOption.UNEXPLAINED,
        OFFERED,
        right,
        8_000,
        Instant.EPOCH);
  }
}
