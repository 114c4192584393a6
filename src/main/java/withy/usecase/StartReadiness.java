package withy.usecase;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.measurement.SequentialTest;
import withy.core.response.DrillKind;

/** Lets a learner who feels ready begin a readiness drill of their own. */
public final class StartReadiness {
  /**
   * Whoever tries again and again is called ready by chance in the end: of those who are right in
   * .60 of all items one in 24 at the first try, one in five after five. So a new try comes after a
   * night.
   */
  static final Duration WAIT = Duration.ofHours(12);

  private final OpenClass openClass;
  private final Assignments assignments;
  private final Clock clock;
  private final Secrets secrets;

  StartReadiness(OpenClass openClass, Assignments assignments, Clock clock, Secrets secrets) {
    this.openClass = openClass;
    this.assignments = assignments;
    this.clock = clock;
    this.secrets = secrets;
  }

  /**
   * The learner's readiness drill: one that was begun within the last hours, or a new one. It asks
   * about every concept that the drills of the class have asked about; about all where there was no
   * drill yet.
   *
   * @param title under which it is listed
   */
  public Assignment start(LearnerCaller learner, String title) {
    SchoolClass own = openClass.of(learner);
    Instant now = Moments.now(clock);
    @Nullable Assignment latest = latest(learner);
    if (latest != null && latest.assignedAt().plus(WAIT).isAfter(now)) {
      return latest;
    }
    Composition all =
        new Composition(
            concepts(own.practice(), assignments.of(own.id())),
            List.of(),
            null,
            SequentialTest.USUAL.most());
    DrillTerms terms = DrillTerms.own(DrillKind.READINESS, learner.id());
    Assignment started =
        new Assignment(secrets.id(), own.id(), Names.title(title), all, null, now, null, terms);
    assignments.add(started);
    return started;
  }

  private @Nullable Assignment latest(LearnerCaller learner) {
    return assignments.of(learner.schoolClass()).stream()
        .filter(each -> each.terms().kind() == DrillKind.READINESS)
        .filter(each -> each.terms().own() && each.terms().isFor(learner.id()))
        .findFirst()
        .orElse(null);
  }

  private static List<Concept> concepts(Practice practice, List<Assignment> drills) {
    List<Concept> asked = new ArrayList<>();
    for (Assignment each : drills.stream().filter(drill -> !drill.terms().own()).toList()) {
      for (Concept concept : measurable(practice, each.composition())) {
        if (!asked.contains(concept)) {
          asked.add(concept);
        }
      }
    }
    asked.sort(null);
    return asked;
  }

  /** What a drill asks about under the practice of the class, whatever its own practice was. */
  private static List<Concept> measurable(Practice practice, Composition drill) {
    return ItemGenerator.measurable(practice, drill.under(null).graded(null));
  }
}
