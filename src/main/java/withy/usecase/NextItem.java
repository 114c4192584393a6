package withy.usecase;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import withy.core.measurement.SequentialTest;
import withy.core.response.DrillKind;

/** Gives a learner the next item of a drill, and the same one until it is answered. */
public final class NextItem {
  private final SchoolClasses classes;
  private final Assignments assignments;
  private final IssuedItems issuedItems;
  private final Responses responses;
  private final Issuing issuing;
  private final ItemSource source;
  private final Clock clock;

  NextItem(
      SchoolClasses classes,
      Assignments assignments,
      IssuedItems issuedItems,
      Responses responses,
      Clock clock,
      Issuing issuing,
      ItemSource source) {
    this.classes = classes;
    this.assignments = assignments;
    this.issuedItems = issuedItems;
    this.responses = responses;
    this.issuing = issuing;
    this.source = source;
    this.clock = clock;
  }

  /**
   * The item to answer; empty when the drill is done. An item that was issued by another version of
   * the generator, which might draw it otherwise, is withdrawn and another issued in its place.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another class's or for others of it;
   *     NOT_OPEN
   */
  public Optional<IssuedItem> next(LearnerCaller learner, String assignmentId) {
    Assignment assignment =
        assignments
            .find(assignmentId)
            .filter(found -> found.schoolClass().equals(learner.schoolClass()))
            .filter(found -> found.terms().isFor(learner.id()))
            .orElseThrow(() -> new Refused(Reason.UNKNOWN_ASSIGNMENT));
    Instant opens = assignment.terms().opensAt();
    if (opens != null && !assignment.terms().isOpen(Moments.now(clock))) {
      throw new Refused(Reason.NOT_OPEN, opens);
    }
    return issue(learner, assignment)
        .map(found -> IssuedItem.of(found, Issuing.redraw(source, found, assignment)));
  }

  private Optional<Issue> issue(LearnerCaller learner, Assignment assignment) {
    Optional<Issue> open = issuedItems.open(learner.id(), assignment.id());
    if (open.filter(Issuing::isCurrent).isPresent()) {
      return open;
    }
    open.ifPresent(outdated -> issuedItems.withdraw(outdated.id()));
    int position = responses.answered(learner.id(), assignment.id());
    boolean done = position >= assignment.composition().length() || assignment.isClosed();
    if (done || isDecided(learner, assignment)) {
      return Optional.empty();
    }
    Issue stands = issueAt(position, learner, assignment);
    // a call at the same moment may have issued the item, and its answer have come in since
    return responses.ofItem(stands.id()).isEmpty()
        ? Optional.of(stands)
        : issue(learner, assignment);
  }

  /** A readiness drill ends with the answer that decides it. */
  private boolean isDecided(LearnerCaller learner, Assignment assignment) {
    if (assignment.terms().kind() != DrillKind.READINESS) {
      return false;
    }
    List<Boolean> counted = JudgeReadiness.counted(responses.of(learner.id(), assignment.id()));
    return SequentialTest.USUAL.stand(counted) != SequentialTest.Stand.GO_ON;
  }

  private Issue issueAt(int position, LearnerCaller learner, Assignment assignment) {
    SchoolClass schoolClass =
        classes
            .find(learner.schoolClass())
            .orElseThrow(() -> new Refused(Reason.UNKNOWN_ASSIGNMENT));
    return issuedItems.add(
        issuing.draw(schoolClass.practice(), assignment, learner.id(), position));
  }
}
