package withy.usecase;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;
import withy.core.mark.Practice;
import withy.core.measurement.SequentialTest;
import withy.core.response.DrillKind;

/** Gives a class a drill to do, and shows how far everybody is. */
public final class AssignDrill {
  private final OpenClass openClass;
  private final OwnedAssignments owned;
  private final Learners learners;
  private final Assignments assignments;
  private final Responses responses;
  private final Clock clock;
  private final Secrets secrets;
  private final Rehearsals rehearsals;

  AssignDrill(
      OpenClass openClass,
      Learners learners,
      Assignments assignments,
      Responses responses,
      Clock clock,
      Secrets secrets,
      Rehearsals rehearsals) {
    this.openClass = openClass;
    this.owned = new OwnedAssignments(openClass, assignments);
    this.learners = learners;
    this.assignments = assignments;
    this.responses = responses;
    this.clock = clock;
    this.secrets = secrets;
    this.rehearsals = rehearsals;
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
    return assign(instructor, classId, title, composition, due, Wanted.USUAL);
  }

  /**
   * How a drill shall be done.
   *
   * @param opensAt null: at once
   * @param learners ids of those whom it is for; empty: the whole class
   * @param seed of a fixed drill that was looked at before, so that it is that very drill; null:
   *     any
   */
  public record Wanted(
      DrillKind kind, @Nullable Instant opensAt, List<String> learners, @Nullable Long seed) {
    static final Wanted USUAL = new Wanted(DrillKind.ADAPTIVE, null, List.of());

    public Wanted {
      learners = learners.stream().distinct().toList();
    }

    /** A drill that nobody has looked at before. */
    public Wanted(DrillKind kind, @Nullable Instant opensAt, List<String> learners) {
      this(kind, opensAt, learners, null);
    }
  }

  /**
   * Assigns a drill to a class of the instructor's, or to some of it. A readiness drill is as long
   * as its test may take.
   *
   * @throws Refused UNKNOWN_CLASS, NAME_UNFIT, NOTHING_TO_DRILL, UNKNOWN_LEARNER; DUE_BEFORE_OPEN;
   *     NO_PASSAGE
   */
  public Assignment assign(
      InstructorCaller instructor,
      String classId,
      @Nullable String title,
      Composition composition,
      @Nullable Instant due,
      Wanted wanted) {
    SchoolClass found = openClass.of(instructor, classId);
    return assign(found, title == null ? "" : title, composition, due, wanted);
  }

  Assignment assign(
      SchoolClass found, String title, Composition composition, @Nullable Instant due) {
    return assign(found, title, composition, due, Wanted.USUAL);
  }

  Assignment assign(
      SchoolClass found,
      String title,
      Composition composition,
      @Nullable Instant due,
      Wanted wanted) {
    ComposeDrill.requireItems(found.practice(), composition);
    requireMembers(found, wanted.learners());
    Instant at = wanted.opensAt();
    Instant opens = at == null ? null : at.truncatedTo(ChronoUnit.MILLIS);
    if (opens != null && due != null && !opens.isBefore(due)) {
      throw new Refused(Reason.DUE_BEFORE_OPEN);
    }
    Long seen = wanted.seed();
    long seed = seen == null ? secrets.seed() : seen;
    Composition drawnFrom = drawnFrom(found, composition, wanted.kind(), seed);
    DrillTerms terms = DrillTerms.of(wanted.kind(), opens, seed, wanted.learners());
    Assignment assigned =
        new Assignment(
            secrets.id(),
            found.id(),
            Names.title(title),
            drawnFrom,
            due,
            Moments.now(clock),
            null,
            terms);
    assignments.add(assigned);
    return assigned;
  }

  /** A test is as long as it may take, a rehearsal as its passage. */
  private Composition drawnFrom(
      SchoolClass found, Composition composition, DrillKind kind, long seed) {
    return switch (kind) {
      case READINESS -> composition.ofLength(SequentialTest.USUAL.most());
      case REHEARSAL -> rehearsed(found, Rehearsals.drawnFrom(composition), seed);
      case ADAPTIVE, FIXED -> composition;
    };
  }

  private Composition rehearsed(SchoolClass found, Composition composition, long seed) {
    Practice practice = composition.practiceFor(found.practice());
    int marks = rehearsals.of(practice, composition, seed).size();
    return composition.ofLength(Math.min(marks, Composition.LONGEST));
  }

  private void requireMembers(SchoolClass found, List<String> wanted) {
    List<String> members = learners.of(found.id()).stream().map(Learner::id).toList();
    if (!members.containsAll(wanted)) {
      throw new Refused(Reason.UNKNOWN_LEARNER);
    }
  }

  /**
   * Gives one learner of the class until later.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's; UNKNOWN_LEARNER
   */
  public void extend(
      InstructorCaller instructor, String assignmentId, String learner, Instant due) {
    Assignment found = owned.find(instructor, assignmentId);
    SchoolClass schoolClass = openClass.of(instructor, found.schoolClass());
    requireMembers(schoolClass, List.of(learner));
    assignments.extend(found.id(), learner, due);
  }

  /**
   * How far the class is with one assignment.
   *
   * @throws Refused UNKNOWN_ASSIGNMENT, also where it is another instructor's
   */
  public Progress one(InstructorCaller instructor, String assignmentId) {
    Assignment found = owned.find(instructor, assignmentId);
    return progress(found, learners.of(found.schoolClass()));
  }

  /**
   * How far the class is with its assignments, the newest first; without what learners began alone.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Progress> progress(InstructorCaller instructor, String classId) {
    SchoolClass found = openClass.of(instructor, classId);
    List<Learner> all = learners.of(found.id());
    return assignments.of(found.id()).stream()
        .filter(each -> !each.terms().own())
        .map(each -> progress(each, all))
        .toList();
  }

  private Progress progress(Assignment assignment, List<Learner> all) {
    Map<String, Responses.Count> counts = responses.counts(assignment.id());
    return new Progress(
        assignment,
        all.stream()
            .filter(each -> assignment.terms().isFor(each.id()))
            .map(each -> progress(each, counts.get(each.id())))
            .toList());
  }

  private static LearnerProgress progress(Learner learner, Responses.@Nullable Count count) {
    return count == null
        ? new LearnerProgress(learner.id(), learner.nickname(), 0, null)
        : new LearnerProgress(learner.id(), learner.nickname(), count.answered(), count.last());
  }
}
