package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import withy.core.item.Concept;
import withy.core.mark.Practice;

/**
 * Planted classes small enough for every build, so with room for chance; {@code SimulationIT} holds
 * the targets themselves.
 */
class SimulationTest {
  private static final Practice PRACTICE = Practice.parse("iala-a");
  private static final Simulation SMALL =
      new Simulation(PRACTICE, Simulation.EIGHT, Population.USUAL, 240, 30, 3);
  private static final Simulation.Figures FIGURES =
      SMALL.run(List.of(Policy.ROUND_ROBIN, Policy.RANDOM, Policy.LEAST_SETTLED));

  @Test
  void findsWhatIsNotKnownSoonerThanDrillsThatDoNotLook() {
    PolicyFigures inTurn = FIGURES.policies().get(0);
    PolicyFigures random = FIGURES.policies().get(1);
    PolicyFigures leastSettled = FIGURES.policies().get(2);
    assertThat(leastSettled.recall().get(1)).isGreaterThan(inTurn.recall().get(1) + 0.02);
    assertThat(leastSettled.recall().get(1)).isGreaterThan(random.recall().get(1) + 0.05);
    assertThat(leastSettled.recall().get(1)).isGreaterThan(0.90);
    assertThat(leastSettled.named().get(1)).isGreaterThan(0.70);
    assertThat(leastSettled.precision().get(1)).isGreaterThan(0.93);
  }

  /** The self-check of the class rule: thrown together, the answers of strugglers count thrice. */
  @Test
  void coversTheClassErrorWherePooledAnswersDoNot() {
    assertThat(FIGURES.rule().coverage()).isBetween(0.85, 0.99);
    assertThat(FIGURES.pooled().coverage()).isLessThan(0.50);
    assertThat(FIGURES.rule().recall()).isGreaterThan(0.80);
    assertThat(FIGURES.rule().falseDiscoveries()).isLessThan(0.05);
  }

  /** The self-check of readiness: only items of a blueprint give what the test promises. */
  @Test
  void isAnotherTestOfReadinessWhenFedByAnAdaptiveDrill() {
    ReadinessFigures readiness = FIGURES.readiness();
    assertThat(readiness.blueprint())
        .isBetween(readiness.mixed().ready() - 0.1, readiness.mixed().ready() + 0.1);
    assertThat(Math.abs(readiness.adaptive() - readiness.blueprint())).isGreaterThan(0.1);
  }

  @Test
  void drawsTheSameFromTheSameSeed() {
    Simulation tiny = new Simulation(PRACTICE, Simulation.EIGHT, Population.USUAL, 10, 9, 5);
    List<Policy> policies = List.of(Policy.LEAST_SETTLED);
    assertThat(tiny.run(policies)).isEqualTo(tiny.run(policies));
  }

  @Test
  void mastersMoreWithLearningThanWithout() {
    Population learning = Population.USUAL.learning(0.2);
    Simulation taught = new Simulation(PRACTICE, Simulation.EIGHT, learning, 100, 30, 5);
    assertThat(taught.run(List.of(Policy.LEAST_SETTLED)).policies().get(0).mastered().get(2))
        .isGreaterThan(0.4);
  }

  @Test
  void plantsOnlyBeliefsThatLeadAstray() {
    for (Concept each : Simulation.TWELVE) {
      Pool pool = Pool.of(PRACTICE, each, 60, 2);
      assertThat(pool.planted()).as(each.id()).isNotEmpty();
      assertThat(pool.beliefs()).containsAll(pool.planted());
    }
  }

  @Test
  void refusesWhatCannotBeSimulated() {
    List<Concept> none = List.of(Concept.REGULATORY_MARK, Concept.REGION);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Simulation(PRACTICE, none, Population.USUAL, 10, 10, 1))
        .withMessageContaining("iala-a");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Simulation(PRACTICE, Simulation.EIGHT, Population.USUAL, 0, 10, 1));
  }
}
