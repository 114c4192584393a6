package withy.standard.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static withy.core.measurement.SequentialTest.Stand.GO_ON;
import static withy.core.measurement.SequentialTest.Stand.NOT_READY;
import static withy.core.measurement.SequentialTest.Stand.READY;
import static withy.core.measurement.SequentialTest.Stand.UNDECIDED;
import static withy.standard.measurement.Figures.number;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import withy.core.measurement.Outcome;
import withy.core.measurement.SequentialTest;

/** Wald's sequential test against bounds and exact outcomes; each file names its source. */
class SequentialTestTest {
  private static final SequentialTest FRICK = new SequentialTest(0.40, 0.85, 0.025, 0.025, 1000);

  static List<CSVRecord> usualBounds() {
    return Figures.of("sprt_bounds_060_085_05_10.csv");
  }

  static List<CSVRecord> conceptBounds() {
    return Figures.of("sprt_bounds_050_090_05_10.csv");
  }

  static List<CSVRecord> outcomes() {
    return Figures.of("sprt_oc.csv");
  }

  static List<CSVRecord> frick() {
    return Figures.of("sprt_sequence_frick_085_040.csv");
  }

  @ParameterizedTest
  @MethodSource("usualBounds")
  void decidesAtTheBounds(CSVRecord row) {
    holds(SequentialTest.USUAL, row);
  }

  @ParameterizedTest
  @MethodSource("conceptBounds")
  void decidesAtTheBoundsOfAnotherTest(CSVRecord row) {
    holds(new SequentialTest(0.50, 0.90, 0.05, 0.10, 1000), row);
  }

  private static void holds(SequentialTest test, CSVRecord row) {
    int answers = (int) number(row, "n");
    String ready = row.get("ready_if_correct_ge");
    String notReady = row.get("notready_if_correct_le");
    for (int right = 0; right <= answers; right++) {
      boolean isReady = !ready.isEmpty() && right >= Integer.parseInt(ready);
      boolean isNot = !notReady.isEmpty() && right <= Integer.parseInt(notReady);
      assertThat(test.stand(right, answers - right) == READY)
          .as("%d right", right)
          .isEqualTo(isReady);
      assertThat(test.stand(right, answers - right) == NOT_READY).isEqualTo(isNot);
    }
  }

  @ParameterizedTest
  @MethodSource("outcomes")
  void comesToTheExactOutcome(CSVRecord row) {
    boolean endless = row.get("nmax").equals("none");
    SequentialTest test =
        new SequentialTest(
            number(row, "p0_notready"),
            number(row, "p1_ready"),
            number(row, "alpha_P(ready|p0)"),
            number(row, "beta_P(notready|p1)"),
            endless ? 600 : (int) number(row, "nmax"));
    assertThat(test.readyFrom()).isCloseTo(number(row, "lnA"), within(1e-8));
    assertThat(test.notReadyFrom()).isCloseTo(number(row, "lnB"), within(1e-8));
    Outcome outcome = test.outcome(number(row, "true_p"));
    assertThat(outcome.ready()).isCloseTo(number(row, "P_ready"), within(1e-6));
    assertThat(outcome.notReady()).isCloseTo(number(row, "P_notready"), within(1e-6));
    assertThat(outcome.undecided()).isCloseTo(number(row, "P_undecided"), within(1e-6));
    assertThat(outcome.answers()).isCloseTo(number(row, "ASN_exact"), within(1e-4));
  }

  /** Frick's parameters; the sum is written down for each answer of the course. */
  @ParameterizedTest
  @MethodSource("frick")
  void sumsUpTheCourseOfAnswers(CSVRecord row) {
    int answers = (int) number(row, "n");
    List<CSVRecord> before = Figures.of("sprt_sequence_frick_085_040.csv").subList(0, answers);
    int right = before.stream().mapToInt(each -> (int) number(each, "correct")).sum();
    double sum = FRICK.sum(right, answers - right);
    assertThat(sum).isCloseTo(number(row, "lnLR"), within(1e-9));
    assertThat(1 / (1 + Math.exp(-sum))).isCloseTo(number(row, "P(master|prior .5)"), within(1e-9));
  }

  /**
   * Lines of acceptance and rejection, NIST/SEMATECH e-Handbook of Statistical Methods 6.2.6: p1
   * .01, p2 .10, alpha .05, beta .10 (seen from memory, recomputed in the project reference 4.3).
   */
  @Test
  void drawsTheLinesOfTheHandbook() {
    SequentialTest plan = new SequentialTest(0.90, 0.99, 0.10, 0.05, 1000);
    double step = plan.sum(1, 0) - plan.sum(0, 1);
    assertThat(plan.readyFrom() / step)
        .isCloseTo(misc("NIST 6.2.6 h1 (p1=.01,p2=.10,a=.05,b=.10)"), within(1e-9))
        .isCloseTo(0.93886, within(5e-6));
    assertThat(-plan.notReadyFrom() / step)
        .isCloseTo(misc("NIST h2"), within(1e-8))
        .isCloseTo(1.20538, within(5e-6));
    assertThat(plan.sum(1, 0) / step)
        .isCloseTo(misc("NIST slope s"), within(1e-10))
        .isCloseTo(0.039747, within(5e-7));
    int answers = 1;
    while (plan.stand(answers, 0) == GO_ON) {
      answers++;
    }
    assertThat(answers).isEqualTo(24);
    assertThat(misc("NIST earliest n for acceptance")).isEqualTo(24);
  }

  /** Wald's own example, defective share .1 against .3, risks .02 and .03. */
  @Test
  void drawsTheLinesOfWald() {
    SequentialTest plan = new SequentialTest(0.70, 0.90, 0.03, 0.02, 1000);
    double step = plan.sum(1, 0) - plan.sum(0, 1);
    assertThat(plan.readyFrom() / step)
        .isCloseTo(misc("Wald p0=.1 p1=.3 a=.02 b=.03 h_accept"), within(1e-9));
    assertThat(-plan.notReadyFrom() / step).isCloseTo(misc("... h_reject"), within(1e-8));
    assertThat(plan.sum(1, 0) / step).isCloseTo(misc("... slope"), within(1e-9));
  }

  private static double misc(String quantity) {
    return Double.parseDouble(Figures.value("misc_checks.csv", quantity, "computed"));
  }

  @ParameterizedTest
  @CsvSource({"9,0,READY", "8,0,GO_ON", "0,3,NOT_READY", "0,2,GO_ON", "30,10,UNDECIDED"})
  void saysWhatNineRightOrThreeWrongInARowMean(int right, int wrong, SequentialTest.Stand stand) {
    assertThat(SequentialTest.USUAL.stand(right, wrong)).isEqualTo(stand);
  }

  @Test
  void endsWithTheFirstAnswerThatDecides() {
    List<Boolean> readyThenNot = new ArrayList<>(Collections.nCopies(9, true));
    readyThenNot.addAll(Collections.nCopies(20, false));
    assertThat(SequentialTest.USUAL.stand(readyThenNot)).isEqualTo(READY);
    assertThat(SequentialTest.USUAL.stand(List.of())).isEqualTo(GO_ON);
    assertThat(UNDECIDED).isNotEqualTo(GO_ON);
  }

  @Test
  void refusesWhatIsNoTest() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SequentialTest(0.85, 0.60, 0.05, 0.10, 40));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SequentialTest(0.60, 0.85, 0.6, 0.5, 40));
  }
}
