package withy.usecase;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.core.response.DrillKind;

/** Shows a learner what there is to do. */
public final class ListAssignments {
  private final Assignments assignments;
  private final Responses responses;
  private final Clock clock;

  public ListAssignments(Assignments assignments, Responses responses, Clock clock) {
    this.clock = clock;
    this.assignments = assignments;
    this.responses = responses;
  }

  /**
   * An assignment and how far the learner is with it.
   *
   * @param title empty when it was given none
   * @param due for this learner
   * @param length items at most; a readiness drill may end sooner
   * @param opensAt when it opens; null once it has
   * @param passage the title of the water whose passage is rehearsed; null of other drills
   * @param room whether it is one item that was put to the class in its room
   */
  public record OwnAssignment(
      String id,
      String title,
      @Nullable Instant due,
      int answered,
      int length,
      boolean room,
      DrillKind kind,
      @Nullable Instant opensAt,
      @Nullable String passage) {
    /** Whether an item waits on the wall of the room. */
    public boolean waits() {
      return room && answered < length;
    }
  }

  /**
   * The assignments of the learner's class, the newest first; without what was put to the room and
   * closed before the learner answered.
   */
  public List<OwnAssignment> of(LearnerCaller learner) {
    List<OwnAssignment> all = new ArrayList<>();
    for (Assignment each : assignments.of(learner.schoolClass())) {
      if (!each.terms().isFor(learner.id())) {
        continue;
      }
      OwnAssignment own = own(learner, each);
      if (!each.isClosed() || own.answered() > 0) {
        all.add(own);
      }
    }
    return List.copyOf(all);
  }

  /**
   * One assignment of the learner's class, also one that was put to the room and closed.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another class's
   */
  public OwnAssignment one(LearnerCaller learner, String id) {
    return assignments
        .find(id)
        .filter(found -> found.schoolClass().equals(learner.schoolClass()))
        .filter(found -> found.terms().isFor(learner.id()))
        .map(found -> own(learner, found))
        .orElseThrow(() -> new Refused(Reason.UNKNOWN_ASSIGNMENT));
  }

  private OwnAssignment own(LearnerCaller learner, Assignment assignment) {
    SurveyedWater passage = assignment.passage();
    return new OwnAssignment(
        assignment.id(),
        assignment.title(),
        assignment.dueFor(learner.id()),
        responses.answered(learner.id(), assignment.id()),
        assignment.composition().length(),
        assignment.room() != null,
        assignment.terms().kind(),
        assignment.terms().isOpen(clock.instant()) ? null : assignment.terms().opensAt(),
        passage == null ? null : passage.title());
  }
}
