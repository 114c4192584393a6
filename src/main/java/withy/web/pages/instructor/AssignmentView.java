package withy.web.pages.instructor;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One assignment, for its instructor.
 *
 * @param begun how many learners have, with all answers
 * @param readiness of a readiness drill, the class in one sentence; null of others
 * @param items of a fixed drill, to talk over; none of others
 */
public record AssignmentView(
    String id,
    String schoolClass,
    String className,
    String title,
    String kind,
    Linked begun,
    List<String> facts,
    @Nullable String readiness,
    List<DoneRow> learners,
    List<TalkItem> items) {
  /**
   * How far one learner is.
   *
   * @param answered how many items, with the answers
   * @param judged what readiness drills found; null of other drills
   * @param extended until when it is for this learner alone; empty where it is as for all
   */
  public record DoneRow(
      String id,
      String nickname,
      Linked answered,
      String last,
      @Nullable Judged judged,
      String extended) {}

  /**
   * One item that everybody answered.
   *
   * @param number from 1
   * @param counts a line for each answer
   */
  public record TalkItem(int number, Specimen specimen, String base, List<String> counts) {}
}
