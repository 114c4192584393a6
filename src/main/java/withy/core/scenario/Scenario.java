package withy.core.scenario;

import java.util.List;
import withy.core.mark.Practice;

/**
 * One situation on the water.
 *
 * @param marks the one that is asked about first; empty where none is in sight
 */
public record Scenario(Practice practice, Situation situation, List<SightedMark> marks) {
  public Scenario {
    marks = List.copyOf(marks);
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
}
