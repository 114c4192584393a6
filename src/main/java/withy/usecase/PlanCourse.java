package withy.usecase;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.course.CoursePlan;
import withy.core.course.Session;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;

/** Proposes what a class drills when, up to its practical. */
public final class PlanCourse {
  /** Evenings that a plan is made for at most. */
  public static final int MOST_EVENINGS = 50;

  private final OpenClass openClass;
  private final ClassReviews reviews;
  private final Clock clock;

  PlanCourse(OpenClass openClass, ClassReviews reviews, Clock clock) {
    this.openClass = openClass;
    this.reviews = reviews;
    this.clock = clock;
  }

  /** The day it is in a time zone. */
  public LocalDate today(ZoneId zone) {
    return LocalDate.ofInstant(clock.instant(), zone);
  }

  /**
   * The sessions from today on. They drill what the water to be sailed can show; what most learners
   * are expected to need comes first.
   *
   * @param evenings on which the class meets, 1 or more
   * @param water to be sailed; null for all that the practice of the class has
   * @throws Refused UNKNOWN_CLASS; NOTHING_TO_DRILL; MALFORMED if the practical is not 1 to {@link
   *     CoursePlan#LONGEST} days off, or there are no evenings
   */
  public List<Session> propose(
      InstructorCaller instructor,
      String classId,
      ZoneId zone,
      LocalDate practical,
      int evenings,
      @Nullable SurveyedWater water) {
    SchoolClass found = openClass.of(instructor, classId);
    Composition all = new Composition(List.of(), List.of(), null, 1, water);
    ComposeDrill.requireItems(found.practice(), all);
    List<Concept> concepts = ItemGenerator.measurable(found.practice(), all);
    List<Concept> needed = needed(reviews.of(found.id()));
    try {
      return CoursePlan.propose(today(zone), practical, evenings, concepts, needed);
    } catch (IllegalArgumentException unfit) {
      throw new Refused(Reason.MALFORMED, "practical");
    }
  }

  /** Concepts by the number of learners who are expected not to know them, the most first. */
  private static List<Concept> needed(Review review) {
    Map<Concept, Double> expected = new TreeMap<>();
    for (LearnerState each : review.learners()) {
      Concept concept = Term.parse(Concept.class, each.concept());
      expected.merge(concept, 1 - each.knows(), Double::sum);
    }
    return expected.entrySet().stream()
        .sorted(Map.Entry.<Concept, Double>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }
}
