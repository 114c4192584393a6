package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import withy.standard.measurement.Figures;

/**
 * The states of learners and the choice of concepts among the abstract items of the project's
 * reference (section 5): four options, of which one is right, each of two beliefs leads to another,
 * and one is plain. So they are held against figures that another program computed; {@code
 * SimulationTest} does so with real items.
 */
class ReferenceWorldTest {
  private static final int LEARNERS = 2500;
  private static final ReferenceWorld WORLD = ReferenceWorld.of(8, Population.USUAL);

  @ParameterizedTest
  @ValueSource(strings = {"fixed blocked", "round-robin", "random"})
  void findsWhatTheReferenceFindsByTheSameDrill(String policy) {
    List<Found> found = drilled(policy);
    for (CSVRecord row : rows(policy)) {
      Found after = found.get((int) number(row, "n_items") - 1);
      assertThat(after.recall()).isCloseTo(number(row, "recall_at_FPR10"), within(0.025));
      assertThat(after.flagged()).isCloseTo(number(row, "recall_at_P>=.8"), within(0.025));
      assertThat(after.precision()).isCloseTo(number(row, "PPV_at_P>=.8"), within(0.02));
      assertThat(after.named()).isCloseTo(number(row, "misconception_named_right"), within(0.025));
    }
  }

  /**
   * Our choice looks at beliefs too, so it may name them sooner and be a little later elsewhere.
   */
  @Test
  void choosesAsWellAsTheReferenceChooses() {
    List<Found> found = drilled("least settled, gap 2");
    for (CSVRecord row : rows("least settled, gap 2")) {
      Found after = found.get((int) number(row, "n_items") - 1);
      assertThat(after.recall()).isGreaterThan(number(row, "recall_at_FPR10") - 0.025);
      assertThat(after.precision()).isGreaterThan(number(row, "PPV_at_P>=.8") - 0.02);
      assertThat(after.named()).isGreaterThan(number(row, "misconception_named_right") - 0.015);
    }
    int late =
        IntStream.range(0, ReferenceWorld.ITEMS)
            .filter(i -> found.get(i).recall() < 0.90)
            .max()
            .orElse(0);
    assertThat(late + 2).isBetween(11, 16);
  }

  /** Learning .20, of which the statistics take .10: the choice goes back to what is not known. */
  @ParameterizedTest
  @ValueSource(strings = {"round-robin", "random", "least settled, gap 2"})
  void mastersAsMuchWhereItemsTeach(String policy) {
    ReferenceWorld world = ReferenceWorld.of(8, Population.USUAL.learning(0.20));
    List<Found> found = world.drilled(policy, LEARNERS);
    for (CSVRecord row : rows(policy, 0.20)) {
      Found after = found.get((int) number(row, "n_items") - 1);
      assertThat(after.mastered()).isCloseTo(number(row, "mastered_share"), within(0.025));
    }
  }

  /** The same by another seed of that program, which has the blocked drill under another name. */
  @ParameterizedTest
  @CsvSource({"blocked,fixed blocked", "roundrobin,round-robin", "random,random"})
  void findsTheSameByAnotherSeed(String there, String policy) {
    List<Found> found = drilled(policy);
    for (CSVRecord row : Figures.of("sim_policy.csv")) {
      boolean own = row.get("experiment").equals("diagnosis") && row.get("policy").equals(there);
      if (own && row.get("answers_used").equals("option")) {
        Found after = found.get((int) number(row, "n_items") - 1);
        assertThat(after.recall()).isCloseTo(number(row, "c1"), within(0.025));
        assertThat(after.flagged()).isCloseTo(number(row, "c3"), within(0.025));
        assertThat(after.precision()).isCloseTo(number(row, "c5"), within(0.02));
        assertThat(after.named()).isCloseTo(number(row, "c6"), within(0.025));
      }
    }
  }

  private static List<CSVRecord> rows(String policy) {
    return rows(policy, 0);
  }

  private static List<CSVRecord> rows(String policy, double learning) {
    List<CSVRecord> rows =
        Figures.of("sim_targets.csv").stream()
            .filter(row -> row.get("policy").equals(policy))
            .filter(row -> number(row, "learning_per_item") == learning)
            .toList();
    assertThat(rows).hasSize(3);
    return rows;
  }

  private static List<Found> drilled(String policy) {
    return WORLD.drilled(policy, LEARNERS);
  }
}
