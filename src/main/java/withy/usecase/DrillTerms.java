package withy.usecase;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.response.DrillKind;

/**
 * Under which terms a drill is done.
 *
 * @param opensAt before which nobody is given an item; null: at once
 * @param seed from which the items of a fixed drill are drawn
 * @param learners ids of those whom it is for; empty: the whole class
 * @param own whether a learner began it alone
 * @param extensions later due times, by learner's id
 */
public record DrillTerms(
    DrillKind kind,
    @Nullable Instant opensAt,
    long seed,
    List<String> learners,
    boolean own,
    Map<String, Instant> extensions) {
  /** Adaptive, at once, for the whole class. */
  public static final DrillTerms USUAL = of(DrillKind.ADAPTIVE, null, 0, List.of());

  public DrillTerms {
    learners = List.copyOf(learners);
    extensions = Collections.unmodifiableMap(new TreeMap<>(extensions));
  }

  /** Terms without extensions. */
  static DrillTerms of(
      DrillKind kind, @Nullable Instant opensAt, long seed, List<String> learners) {
    return new DrillTerms(kind, opensAt, seed, learners, false, Map.of());
  }

  /** Terms of a drill that a learner begins alone. */
  static DrillTerms own(DrillKind kind, String learner) {
    return new DrillTerms(kind, null, 0, List.of(learner), true, Map.of());
  }

  boolean isFor(String learner) {
    return learners.isEmpty() || learners.contains(learner);
  }

  boolean isOpen(Instant now) {
    return opensAt == null || !now.isBefore(opensAt);
  }
}
