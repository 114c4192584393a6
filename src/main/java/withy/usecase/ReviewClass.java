package withy.usecase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.measurement.ClassRate;
import withy.core.measurement.ConfusionTable;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.Need;
import withy.core.measurement.Review;
import withy.core.measurement.SessionChange;
import withy.core.measurement.Silence;
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

  /**
   * What those who are silent hide of each concept, by its name.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Silence> silence(InstructorCaller instructor, String classId) {
    String id = openClass.of(instructor, classId).id();
    return Silence.of(reviews.of(id), reviews.sums(id), learners.of(id).size());
  }

  /**
   * What changed in the latest session of a class, by concept.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<SessionChange> changes(InstructorCaller instructor, String classId) {
    return latest(instructor, classId).changes();
  }

  /**
   * The same, and when that session began.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public ClassReviews.Latest latest(InstructorCaller instructor, String classId) {
    return reviews.latest(openClass.of(instructor, classId).id());
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

  /**
   * What the class needs, the most needed first.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<Need> needs(InstructorCaller instructor, String classId) {
    String id = openClass.of(instructor, classId).id();
    return Need.of(reviews.of(id), reviews.sums(id));
  }

  /**
   * How often each mark was taken for each other one.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public ConfusionTable confusions(InstructorCaller instructor, String classId) {
    return ConfusionTable.of(reviews.sums(openClass.of(instructor, classId).id()));
  }

  /**
   * The error rates with which the class began, by concept.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public Map<String, ClassRate> beginnings(InstructorCaller instructor, String classId) {
    List<LearnerSums> sums = reviews.sums(openClass.of(instructor, classId).id());
    return Need.beginnings(sums, sums.size());
  }

  /**
   * What the answers of one learner of a class add up to.
   *
   * @throws Refused UNKNOWN_CLASS, UNKNOWN_LEARNER
   */
  public LearnerSums learner(InstructorCaller instructor, String classId, String learner) {
    Learner found =
        learners
            .member(openClass.of(instructor, classId).id(), learner)
            .orElseThrow(() -> new Refused(Reason.UNKNOWN_LEARNER));
    return reviews.sums(found.schoolClass()).stream()
        .filter(each -> each.learner().equals(found.nickname()))
        .findFirst()
        .orElse(LearnerSums.none(found.nickname()));
  }

  /**
   * The ids of the learners of a class by nickname.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public Map<String, String> ids(InstructorCaller instructor, String classId) {
    Map<String, String> ids = new LinkedHashMap<>();
    learners
        .of(openClass.of(instructor, classId).id())
        .forEach(each -> ids.put(each.nickname(), each.id()));
    return ids;
  }

  /**
   * The ids of those who most likely do not know a concept.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public List<String> inNeed(InstructorCaller instructor, String classId, Concept concept) {
    Map<String, String> ids = ids(instructor, classId);
    return review(instructor, classId).learners().stream()
        .filter(each -> each.concept().equals(concept.id()) && each.needsHelp())
        .map(each -> ids.getOrDefault(each.learner(), ""))
        .filter(each -> !each.isEmpty())
        .toList();
  }
}
