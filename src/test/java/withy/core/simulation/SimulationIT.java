package withy.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import withy.core.mark.Practice;

/**
 * The targets of the project (its reference, 8.4) on 2,000 planted learners; {@code withy simulate}
 * prints the same.
 */
class SimulationIT {
  @TestFactory
  List<DynamicTest> reachesItsTargets() {
    Simulation simulation =
        new Simulation(Practice.parse("iala-a"), Simulation.EIGHT, Population.USUAL, 2000, 30, 1);
    return Target.of(simulation.run(List.of(Policy.LEAST_SETTLED))).stream()
        .map(each -> DynamicTest.dynamicTest(each.figure(), () -> met(each)))
        .toList();
  }

  private static void met(Target target) {
    assertThat(target.value()).as(target.figure()).isBetween(target.least(), target.most());
  }
}
