package withy.usecase;

import java.util.List;
import java.util.Map;
import java.util.Set;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.measurement.Review;
import withy.core.response.Response;

/** Tells an instructor what a class gets wrong, and what to drill next. */
public final class ReviewClass {
  /** Long enough for a verdict on one concept, short enough for one evening. */
  private static final int FOLLOW_UP_LENGTH = 12;

  private final OpenClass openClass;
  private final Learners learners;
  private final ClassReviews reviews;

  public ReviewClass(OpenClass openClass, Learners learners, ClassReviews reviews) {
    this.openClass = openClass;
    this.learners = learners;
    this.reviews = reviews;
  }

  /**
   * The review of a class, the same to the last digit as that of its exported responses: its size
   * is the number of learners who answered.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public Review review(InstructorCaller instructor, String classId) {
    return reviews.of(openClass.of(instructor, classId).id());
  }

  /**
   * All responses of a class, in the order in which they were stored.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Response> responses(InstructorCaller instructor, String classId) {
    return reviews.responses(openClass.of(instructor, classId).id());
  }

  /**
   * The nicknames of those who have answered nothing.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<String> silent(InstructorCaller instructor, String classId) {
    String id = openClass.of(instructor, classId).id();
    Set<String> heard = reviews.heard(id);
    return learners.of(id).stream()
        .filter(each -> !heard.contains(each.id()))
        .map(Learner::nickname)
        .toList();
  }

  /** How much each class of the instructor answered, by its id. */
  public Map<String, Responses.Overview> overview(InstructorCaller instructor) {
    return reviews.overview(instructor.id());
  }

  /**
   * A drill on one concept, all forms, day and night.
   *
   * @throws Refused UNKNOWN_CLASS; NOTHING_TO_DRILL where the practice of the class has no items on
   *     it
   */
  public Composition followUp(InstructorCaller instructor, String classId, Concept concept) {
    SchoolClass found = openClass.of(instructor, classId);
    Composition drill = new Composition(List.of(concept), List.of(), null, FOLLOW_UP_LENGTH);
    ComposeDrill.requireItems(found.practice(), drill);
    return drill;
  }
}
