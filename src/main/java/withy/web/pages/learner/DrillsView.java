package withy.web.pages.learner;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The learner's home: drills, and where they stand.
 *
 * @param wall an item that waits on the wall of the room; null for none
 * @param advice what to practise next; null before the first answer
 * @param readiness what the latest readiness drill found
 * @param listed the ids of all drills, by which a script sees that another came
 */
public record DrillsView(
    String schoolClass,
    @Nullable DrillRow wall,
    List<DrillRow> drills,
    String listed,
    List<StandingGroup> standing,
    @Nullable Advised advice,
    String readiness) {
  /**
   * What to practise next.
   *
   * @param why in one sentence
   */
  public record Advised(String concept, String name, String why) {}
}
