package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/**
 * Planted classes through the real items, choice of items and statistics.
 *
 * @param practice by which items are drawn
 * @param concepts drilled; each of them can be asked about under the practice
 * @param learners how many are planted, at least 1
 * @param items of each drill, at least 3
 * @param seed from which all is drawn: the same arguments give the same figures
 */
public record Simulation(
    Practice practice,
    List<Concept> concepts,
    Population population,
    int learners,
    int items,
    long seed) {
  /** Commonly drilled, and each has two beliefs that most of its items tell apart. */
  public static final List<Concept> EIGHT =
      List.of(
          Concept.LATERAL_LIGHT,
          Concept.REGION,
          Concept.CARDINAL_IDENTITY,
          Concept.CARDINAL_LIGHT,
          Concept.ISOLATED_DANGER,
          Concept.SAFE_WATER,
          Concept.SPECIAL_MARK,
          Concept.EMERGENCY_WRECK);

  /** With four more, whose beliefs are harder to tell apart. */
  public static final List<Concept> TWELVE = twelve();

  /** Learners of a class in the figures of the class rule. */
  public static final int CLASS = 12;

  private static final int POOL = 300;

  /**
   * @throws IllegalArgumentException if there is nothing to simulate
   */
  public Simulation {
    concepts = List.copyOf(concepts);
    if (learners < 1 || items < 3 || concepts.size() < 2) {
      throw new IllegalArgumentException(
          learners + " learners, " + items + " items, " + concepts.size() + " concepts");
    }
    List<Concept> measurable =
        ItemGenerator.measurable(practice, new Composition(concepts, List.of(), null, 1));
    if (!measurable.containsAll(concepts)) {
      throw new IllegalArgumentException(practice.id() + " cannot measure all of " + concepts);
    }
  }

  private static List<Concept> twelve() {
    List<Concept> twelve = new ArrayList<>(EIGHT);
    twelve.add(Concept.CARDINAL_SIDE);
    twelve.add(Concept.PREFERRED_CHANNEL);
    twelve.add(Concept.LIGHT_CHARACTER);
    twelve.add(Concept.LATERAL_SIDE);
    return List.copyOf(twelve);
  }

  /**
   * All that is found.
   *
   * @param policies in the order asked for
   * @param rule of classes whose strugglers are given three times the items
   * @param pooled of the same classes, all answers thrown together: what the rule is better than
   */
  public record Figures(
      List<PolicyFigures> policies,
      ClassFigures rule,
      ClassFigures pooled,
      ReadinessFigures readiness) {
    public Figures {
      policies = List.copyOf(policies);
    }
  }

  /** Runs it. */
  public Figures run(List<Policy> policies) {
    List<Pool> pools = new ArrayList<>();
    for (Concept each : concepts) {
      pools.add(Pool.of(practice, each, POOL, seed));
    }
    List<PolicyFigures> figures = new ArrayList<>();
    for (Policy each : policies) {
      figures.add(new PolicyRun(each, pools, population, items).figures(learners, seed));
    }
    ClassRun classes = new ClassRun(pools, population, CLASS);
    classes.run(Math.max(1, learners / CLASS), seed);
    ReadinessFigures readiness = new ReadinessRun(pools).figures(learners, seed);
    return new Figures(figures, classes.rule(), classes.pooled(), readiness);
  }
}
