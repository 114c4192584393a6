package withy.usecase;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;

/** Gives a class a drill to do, and shows how far everybody is. */
public final class AssignDrill {
  private final OpenClass openClass;
  private final Learners learners;
  private final Assignments assignments;
  private final Responses responses;
  private final Clock clock;
  private final Secrets secrets;

  public AssignDrill(
      OpenClass openClass,
      Learners learners,
      Assignments assignments,
      Responses responses,
      Clock clock,
      Secrets secrets) {
    this.openClass = openClass;
    this.learners = learners;
    this.assignments = assignments;
    this.responses = responses;
    this.clock = clock;
    this.secrets = secrets;
  }

  /** How far a class is with an assignment, every learner of the class by nickname. */
  public record Progress(Assignment assignment, List<LearnerProgress> learners) {
    public Progress {
      learners = List.copyOf(learners);
    }
  }

  /**
   * How far a learner is.
   *
   * @param lastAnsweredAt null before the first answer
   */
  public record LearnerProgress(
      String learner, String nickname, int answered, @Nullable Instant lastAnsweredAt) {}

  /**
   * Assigns a drill to a class of the instructor's.
   *
   * @throws Refused UNKNOWN_CLASS, NAME_UNFIT, NOTHING_TO_DRILL
   */
  public Assignment assign(
      InstructorCaller instructor,
      String classId,
      @Nullable String title,
      Composition composition,
      @Nullable Instant due) {
    return assign(openClass.of(instructor, classId), title == null ? "" : title, composition, due);
  }

  Assignment assign(
      SchoolClass found, String title, Composition composition, @Nullable Instant due) {
    ComposeDrill.requireItems(found.practice(), composition);
    Assignment assigned =
        new Assignment(
            secrets.id(), found.id(), Names.title(title), composition, due, Moments.now(clock));
    assignments.add(assigned);
    return assigned;
  }

  /**
   * How far the class is with its assignments, the newest first.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Progress> progress(InstructorCaller instructor, String classId) {
    SchoolClass found = openClass.of(instructor, classId);
    List<Learner> all = learners.of(found.id());
    return assignments.of(found.id()).stream().map(each -> progress(each, all)).toList();
  }

  private Progress progress(Assignment assignment, List<Learner> all) {
    Map<String, Responses.Count> counts = responses.counts(assignment.id());
    return new Progress(
        assignment, all.stream().map(each -> progress(each, counts.get(each.id()))).toList());
  }

  private static LearnerProgress progress(Learner learner, Responses.@Nullable Count count) {
    return count == null
        ? new LearnerProgress(learner.id(), learner.nickname(), 0, null)
        : new LearnerProgress(learner.id(), learner.nickname(), count.answered(), count.last());
  }
}
