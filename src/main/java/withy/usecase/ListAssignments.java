package withy.usecase;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Shows a learner what there is to do. */
public final class ListAssignments {
  private final Assignments assignments;
  private final Responses responses;

  public ListAssignments(Assignments assignments, Responses responses) {
    this.assignments = assignments;
    this.responses = responses;
  }

  /**
   * An assignment and how far the learner is with it.
   *
   * @param title empty when it was given none
   */
  public record OwnAssignment(
      String id, String title, @Nullable Instant due, int answered, int length) {}

  /** The assignments of the learner's class, the newest first. */
  public List<OwnAssignment> of(LearnerCaller learner) {
    return assignments.of(learner.schoolClass()).stream().map(each -> own(learner, each)).toList();
  }

  private OwnAssignment own(LearnerCaller learner, Assignment assignment) {
    return new OwnAssignment(
        assignment.id(),
        assignment.title(),
        assignment.due(),
        responses.answered(learner.id(), assignment.id()),
        assignment.composition().length());
  }
}
