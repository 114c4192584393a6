package withy.core.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.MarkDescription;
import withy.core.mark.Practice;

/**
 * One situation on the water.
 *
 * @param marks the one that is asked about first; empty where none is in sight
 * @param lookout the light ashore that is asked about in place of a mark; null where there is none
 * @param question what is asked about a light in sight beside its character, else null
 * @param sailing the stretch of water in which the boat is, its marks in the order of those in
 *     sight; null on open water
 */
public record Scenario(
    Practice practice,
    Situation situation,
    List<SightedMark> marks,
    @Nullable Lookout lookout,
    @Nullable LightQuestion question,
    @Nullable Sailing sailing) {
  public Scenario {
    marks = List.copyOf(marks);
  }

  /** A situation in which no light ashore is asked about. */
  public Scenario(Practice practice, Situation situation, List<SightedMark> marks) {
    this(practice, situation, marks, null, null, null);
  }

  /** A situation in which a light ashore is asked about. */
  public Scenario(
      Practice practice, Situation situation, List<SightedMark> marks, @Nullable Lookout lookout) {
    this(practice, situation, marks, lookout, null, null);
  }

  /** The same situation, and what is asked about the light in sight. */
  public Scenario asking(@Nullable LightQuestion asked) {
    return new Scenario(practice, situation, marks, lookout, asked, sailing);
  }

  /** The same situation in a stretch of water. */
  public Scenario in(Sailing water) {
    return new Scenario(practice, situation, marks, lookout, question, water);
  }

  /**
   * The mark that is asked about.
   *
   * @throws IllegalStateException if none is in sight
   */
  public SightedMark mark() {
    if (marks.isEmpty()) {
      throw new IllegalStateException("no mark is in sight");
    }
    return marks.get(0);
  }

  /**
   * The mark that is asked about as its practice describes it.
   *
   * @throws IllegalStateException if none is in sight, or the practice has none of the kind
   */
  public MarkDescription described() {
    SightedMark asked = mark();
    return practice
        .mark(asked.kind(), asked.appearance())
        .orElseThrow(
            () -> new IllegalStateException(practice.id() + " has no " + asked.kind().id()));
  }
}
