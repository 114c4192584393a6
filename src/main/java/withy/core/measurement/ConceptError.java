package withy.core.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a class gets wrong of one concept, and what is behind it.
 *
 * @param beliefs the misconceptions of the concept, the most widely held first
 */
public record ConceptError(String concept, ClassRate rate, Verdict verdict, List<Belief> beliefs) {
  private static final Comparator<Belief> MOST_HELD =
      Comparator.comparingInt(Belief::learners)
          .thenComparingDouble(Belief::expected)
          .reversed()
          .thenComparing(Belief::misconception);

  public ConceptError {
    beliefs = List.copyOf(beliefs);
  }

  static ConceptError of(String concept, ClassRate rate, int classSize, List<LearnerState> states) {
    Verdict verdict = Verdict.of(rate.learners(), classSize, rate.answers(), rate.aboveTolerance());
    return new ConceptError(concept, rate, verdict, beliefs(states));
  }

  /** The misconception that most learners hold, or null where it is likely of none. */
  public @Nullable Belief beliefBehind() {
    boolean held = !beliefs.isEmpty() && beliefs.get(0).learners() > 0;
    return held ? beliefs.get(0) : null;
  }

  private static List<Belief> beliefs(List<LearnerState> states) {
    SortedSet<String> names = new TreeSet<>();
    states.forEach(state -> names.addAll(state.misconceptions().keySet()));
    List<Belief> beliefs = new ArrayList<>();
    for (String name : names) {
      beliefs.add(belief(name, states));
    }
    beliefs.sort(MOST_HELD);
    return beliefs;
  }

  private static Belief belief(String name, List<LearnerState> states) {
    int learners = 0;
    double expected = 0;
    for (LearnerState state : states) {
      learners += name.equals(state.namedMisconception()) ? 1 : 0;
      expected += state.misconceptions().getOrDefault(name, 0.0);
    }
    return new Belief(name, learners, expected);
  }
}
