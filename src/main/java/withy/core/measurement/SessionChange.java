package withy.core.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How the latest session of a class compares with all before it on one concept, by those learners
 * who answered on it both times.
 *
 * @param before their error rate before the session
 * @param now their error rate in it
 */
public record SessionChange(String concept, ClassRate before, ClassRate now) {
  /** Where a change leads. */
  public enum Trend {
    BETTER,
    WORSE,
    /** The 90 % ranges have rates in common: no change can be told from chance. */
    UNCLEAR
  }

  public Trend trend() {
    if (now.upper() < before.lower()) {
      return Trend.BETTER;
    }
    return now.lower() > before.upper() ? Trend.WORSE : Trend.UNCLEAR;
  }

  /** How many learners answered both times. */
  public int learners() {
    return now.learners();
  }

  /**
   * The changes by concept, in the order of their words.
   *
   * @param sums of each learner, the session included
   * @param session what was answered in it, by learner and concept; those of learners without sums
   *     are left out
   */
  public static List<SessionChange> of(
      List<LearnerSums> sums, Map<String, Map<String, Tally>> session) {
    SortedMap<String, List<Tally>> before = new TreeMap<>();
    SortedMap<String, List<Tally>> now = new TreeMap<>();
    for (LearnerSums learner : sums) {
      session
          .getOrDefault(learner.learner(), new TreeMap<>())
          .forEach(
              (concept, in) -> {
                ConceptSums all = learner.concepts().get(concept);
                if (all != null && all.answers() > in.answers()) {
                  add(before, concept, all.tally().without(in));
                  add(now, concept, in);
                }
              });
    }
    List<SessionChange> changes = new ArrayList<>();
    now.forEach(
        (concept, in) -> changes.add(of(concept, before.getOrDefault(concept, List.of()), in)));
    return changes;
  }

  private static void add(Map<String, List<Tally>> to, String concept, Tally tally) {
    to.computeIfAbsent(concept, name -> new ArrayList<>()).add(tally);
  }

  private static SessionChange of(String concept, List<Tally> before, List<Tally> now) {
    int learners = now.size();
    return new SessionChange(concept, ClassRate.of(before, learners), ClassRate.of(now, learners));
  }
}
