package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static withy.standard.measurement.Figures.number;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import withy.core.Chance;
import withy.core.drill.NextConcept;
import withy.core.drill.Standing;
import withy.core.measurement.LearnerModel;
import withy.core.measurement.LearnerState;
import withy.core.measurement.StateSums;
import withy.core.response.OfferedOption;
import withy.core.response.Response;
import withy.standard.measurement.Figures;

/**
 * The states of learners and the choice of concepts among the abstract items of the project's
 * reference (section 5): four options, of which one is right, each of two beliefs leads to another,
 * and one is plain. So they are held against figures that another program computed; {@code
 * SimulationTest} does so with real items.
 */
class ReferenceWorldTest {
  private static final int LEARNERS = 2500;
  private static final int CONCEPTS = 8;
  private static final int ITEMS = 30;

  /** Items of one concept on end where these come one after the other; the last has two. */
  private static final int BLOCK = 4;

  private static final LearnerModel MODEL =
      new LearnerModel(List.of("first", "second"), List.of(0.70, 0.12, 0.08, 0.10), 0);
  private static final List<OfferedOption> OFFERED =
      List.of(
          new OfferedOption("key", null),
          new OfferedOption("a", "first"),
          new OfferedOption("b", "second"),
          new OfferedOption("c", OfferedOption.UNEXPLAINED));

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
    int late = IntStream.range(0, ITEMS).filter(i -> found.get(i).recall() < 0.90).max().orElse(0);
    assertThat(late + 2).isBetween(11, 16);
  }

  private static List<CSVRecord> rows(String policy) {
    List<CSVRecord> rows =
        Figures.of("sim_targets.csv").stream()
            .filter(row -> row.get("policy").equals(policy))
            .filter(row -> number(row, "learning_per_item") == 0)
            .toList();
    assertThat(rows).hasSize(3);
    return rows;
  }

  private static List<Found> drilled(String policy) {
    List<Found> found = IntStream.range(0, ITEMS).mapToObj(i -> new Found()).toList();
    for (int learner = 0; learner < LEARNERS; learner++) {
      new Learner(Chance.of(7, learner)).drill(policy, found);
    }
    return found;
  }

  private static final class Learner {
    private final Chance chance;
    private final double slip;
    private final double pull;
    private final List<PlantedState> planted = new ArrayList<>();
    private final List<StateSums> sums = new ArrayList<>();
    private final List<LearnerState> states = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();

    Learner(Chance chance) {
      this.chance = chance;
      this.slip = Population.between(0.04, 0.16, chance);
      this.pull = Population.between(0.60, 0.90, chance);
      for (int concept = 0; concept < CONCEPTS; concept++) {
        planted.add(state(Population.share(chance)));
        sums.add(MODEL.noAnswers());
        states.add(after(concept));
      }
    }

    private PlantedState state(double place) {
      @Nullable String belief =
          place < 0.70 || place >= 0.90 ? null : place < 0.82 ? "first" : "second";
      return new PlantedState(place < 0.70, belief, slip, pull);
    }

    private LearnerState after(int concept) {
      return MODEL.after("learner", String.valueOf(concept), sums.get(concept));
    }

    void drill(String policy, List<Found> found) {
      for (int number = 0; number < ITEMS; number++) {
        int concept = concept(policy, number);
        asked.add(String.valueOf(concept));
        sums.set(concept, sums.get(concept).plus(response(concept, number)));
        states.set(concept, after(concept));
        for (int each = 0; each < CONCEPTS; each++) {
          found.get(number).add(planted.get(each), planted.get(each), states.get(each));
        }
      }
    }

    private int concept(String policy, int number) {
      return switch (policy) {
        case "fixed blocked" -> number / BLOCK;
        case "round-robin" -> number % CONCEPTS;
        case "random" -> chance.below(CONCEPTS);
        default ->
            Integer.parseInt(
                NextConcept.leastSettled(states.stream().map(Standing::new).toList(), asked, chance)
                    .concept());
      };
    }

    private Response response(int concept, int number) {
      OfferedOption given = given(planted.get(concept));
      return new Response(
          "learner",
          "drill",
          "item-" + number,
          "identify",
          "iala-a",
          List.of(String.valueOf(concept)),
          "key",
          given.value(),
          given.belief(),
          OFFERED,
          given.value().equals("key"),
          8000,
          Instant.EPOCH.plusSeconds(number));
    }

    private OfferedOption given(PlantedState state) {
      if (!state.knows() && state.belief() == null) {
        return chance.pick(OFFERED);
      }
      OfferedOption aim =
          OFFERED.stream()
              .filter(
                  each ->
                      state.knows()
                          ? each.value().equals("key")
                          : each.tempts(String.valueOf(state.belief())))
              .findFirst()
              .orElseThrow();
      boolean firm = Population.share(chance) < (state.knows() ? 1 - slip : pull);
      return firm ? aim : chance.pick(OFFERED.stream().filter(each -> each != aim).toList());
    }
  }
}
