package withy.core.simulation;

import java.util.ArrayList;
import java.util.List;

/**
 * A figure that the project wants to reach, and what it came to.
 *
 * @param least lowest value that will do
 * @param most highest value that will do
 */
public record Target(String figure, double least, double most, double value) {
  public boolean isMet() {
    return value >= least && value <= most;
  }

  /**
   * The targets of drills that follow what is least settled, of the class rule and of readiness.
   */
  public static List<Target> of(Simulation.Figures figures) {
    List<Target> targets = new ArrayList<>();
    figures.policies().stream()
        .filter(each -> each.policy() == Policy.LEAST_SETTLED)
        .forEach(each -> drills(each, targets));
    ClassFigures rule = figures.rule();
    targets.add(atLeast("class-rule-recall", 0.90, rule.recall()));
    targets.add(atMost("class-rule-false-discoveries", 0.02, rule.falseDiscoveries()));
    targets.add(new Target("class-rule-coverage", 0.90, 0.96, rule.coverage()));
    targets.add(atMost("pooled-answers-coverage", 0.50, figures.pooled().coverage()));
    ReadinessFigures readiness = figures.readiness();
    targets.add(atMost("ready-at-.60", 0.05, readiness.notReady().ready()));
    targets.add(atMost("not-ready-at-.85", 0.10, readiness.ready().notReady()));
    return targets;
  }

  private static void drills(PolicyFigures drills, List<Target> targets) {
    double[] recall = {0.85, 0.95, 0.98};
    for (int i = 0; i < recall.length; i++) {
      String figure = "recall-after-" + drills.lengths().get(i);
      targets.add(atLeast(figure, recall[i], drills.recall().get(i)));
    }
    Integer items = drills.itemsToRecall();
    double reached = items == null ? Double.POSITIVE_INFINITY : items;
    targets.add(atMost("items-to-recall-.90", 15, reached));
    String named = "named-after-" + drills.lengths().get(1);
    targets.add(atLeast(named, 0.82, drills.named().get(1)));
    targets.add(atLeast("success", 0.60, drills.success()));
  }

  private static Target atLeast(String figure, double least, double value) {
    return new Target(figure, least, Double.POSITIVE_INFINITY, value);
  }

  private static Target atMost(String figure, double most, double value) {
    return new Target(figure, Double.NEGATIVE_INFINITY, most, value);
  }
}
