package withy.usecase;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import withy.core.Chance;

/**
 * Fills an empty server with an invented class, so that a newcomer sees a review before anybody has
 * answered. Its learners join, and answer real items by the same ways as everybody, in past days.
 */
public final class DemoClass {
  private static final Duration AFTER_ASSIGNMENT = Duration.ofHours(2);

  /** Less than the rest between two sessions, so that each drill is one session of the class. */
  private static final int EVENING_MINUTES = 4 * 60;

  private final Ports ports;
  private final DemoPlan plan;
  private final DemoClock clock;
  private final Secrets secrets;
  private final UseCases useCases;
  private final Instant today;

  public DemoClass(Ports ports, Passwords passwords, Clock clock, Secrets secrets, DemoPlan plan) {
    this.ports = ports;
    this.plan = plan;
    this.today = Moments.now(clock);
    this.clock = new DemoClock(today);
    this.secrets = secrets;
    this.useCases = UseCases.over(ports, passwords, this.clock, secrets);
  }

  /**
   * Makes the class, which is nobody's until the server is set up.
   *
   * @throws Refused NOT_EMPTY if there is a class or an instructor
   */
  public SchoolClass fill() {
    if (!ports.classes().isEmpty() || !ports.instructors().isEmpty()) {
      throw new Refused(Reason.NOT_EMPTY);
    }
    SchoolClass made =
        Founding.found(ports.classes(), secrets, Names.name(plan.name()), plan.practice(), null);
    List<Assignment> assigned = plan.drills().stream().map(each -> assign(made, each)).toList();
    for (int number = 0; number < plan.members().size(); number++) {
      drill(made, assigned, number);
    }
    return made;
  }

  private Assignment assign(SchoolClass made, DemoPlan.Drill drill) {
    clock.set(today.minus(Duration.ofDays(drill.assignedDaysAgo())));
    Instant due = today.plus(Duration.ofDays(drill.dueInDays()));
    AssignDrill.Wanted wanted = new AssignDrill.Wanted(drill.kind(), null, List.of());
    return useCases.assignDrill().assign(made, drill.title(), drill.composition(), due, wanted);
  }

  private void drill(SchoolClass made, List<Assignment> assigned, int number) {
    DemoPlan.Member member = plan.members().get(number);
    clock.set(assigned.get(0).assignedAt());
    JoinClass.Joined joined = useCases.joinClass().join(made.code(), member.nickname());
    useCases.signIn().signOut(joined.session().token()); // nobody holds it
    LearnerCaller learner = LearnerCaller.of(joined.learner());
    for (int drill = 0; drill < assigned.size(); drill++) {
      Chance chance = Chance.of(number, drill);
      clock.set(start(assigned.get(drill), chance));
      DemoLearner answers = new DemoLearner(member, drill, chance);
      for (int count = 0; count < member.answered().get(drill); count++) {
        answer(learner, assigned.get(drill), answers);
      }
    }
  }

  private static Instant start(Assignment assigned, Chance chance) {
    Duration later = Duration.ofMinutes(chance.below(EVENING_MINUTES));
    return assigned.assignedAt().plus(AFTER_ASSIGNMENT).plus(later);
  }

  private void answer(LearnerCaller learner, Assignment assigned, DemoLearner answers) {
    Optional<IssuedItem> next = useCases.nextItem().next(learner, assigned.id());
    next.ifPresent(
        item -> {
          Duration shown = answers.shown();
          clock.pass(shown);
          UUID id = new UUID(secrets.seed(), secrets.seed());
          useCases
              .answerItem()
              .answer(learner, id, item.id(), answers.given(item), shown.toMillis());
        });
  }
}
