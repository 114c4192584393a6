package withy.usecase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.measurement.LearnerState;
import withy.core.measurement.Review;
import withy.core.measurement.SequentialTest;
import withy.core.measurement.WilsonInterval;
import withy.core.response.DrillKind;
import withy.core.response.Response;

/**
 * Says of each learner of a class whether a readiness drill finds them ready, and what stands in
 * the way. A drill is no licence: certificates are granted by licensed instructors.
 */
public final class JudgeReadiness {
  private static final double GATE = 0.80;
  private static final double CONFIDENCE = 0.95;

  private final OpenClass openClass;
  private final Learners learners;
  private final Assignments assignments;
  private final Responses responses;
  private final ClassReviews reviews;

  JudgeReadiness(OpenClass openClass, Ports ports, ClassReviews reviews) {
    this.openClass = openClass;
    this.learners = ports.learners();
    this.assignments = ports.assignments();
    this.responses = ports.responses();
    this.reviews = reviews;
  }

  /**
   * How a learner stands.
   *
   * @param drill the latest readiness drill, by id; null where none was begun
   * @param stand of it; null where there is none
   * @param right of the answers that count there
   * @param answered those answers; rapid ones do not count
   * @param tries readiness drills begun, the latest among them
   * @param gate safety-critical concepts that the learner most likely does not know
   */
  public record Verdict(
      String learner,
      String nickname,
      @Nullable String drill,
      SequentialTest.@Nullable Stand stand,
      int right,
      int answered,
      int tries,
      List<Concept> gate) {
    public Verdict {
      gate = List.copyOf(gate);
    }

    /** Ready by the drill, and nothing safety-critical stands against it. */
    public boolean isReady() {
      return stand == SequentialTest.Stand.READY && gate.isEmpty();
    }
  }

  /**
   * How a class stands.
   *
   * @param learners by nickname, every learner of the class
   * @param ready how many are ready
   * @param judged how many have ended a readiness drill
   * @param interval of the share ready of those judged, 95 %; null where nobody is judged
   */
  public record Readiness(
      List<Verdict> learners, int ready, int judged, @Nullable WilsonInterval interval) {
    public Readiness {
      learners = List.copyOf(learners);
    }
  }

  /**
   * The readiness of a class of the instructor's.
   *
   * @throws Refused UNKNOWN_CLASS
   */
  public Readiness of(InstructorCaller instructor, String classId) {
    SchoolClass found = openClass.of(instructor, classId);
    List<Verdict> verdicts = verdicts(found.id(), learners.of(found.id()));
    int ready = (int) verdicts.stream().filter(Verdict::isReady).count();
    int judged = (int) verdicts.stream().filter(JudgeReadiness::isJudged).count();
    WilsonInterval interval = judged == 0 ? null : WilsonInterval.of(ready, judged, CONFIDENCE);
    return new Readiness(verdicts, ready, judged, interval);
  }

  /** How the learner stands. */
  public Verdict of(LearnerCaller learner) {
    Learner own = new Learner(learner.id(), learner.schoolClass(), learner.nickname());
    return verdicts(learner.schoolClass(), List.of(own)).get(0);
  }

  private static boolean isJudged(Verdict verdict) {
    return verdict.stand() != null && verdict.stand() != SequentialTest.Stand.GO_ON;
  }

  private List<Verdict> verdicts(String schoolClass, List<Learner> all) {
    List<Assignment> drills =
        assignments.of(schoolClass).stream()
            .filter(each -> each.terms().kind() == DrillKind.READINESS)
            .toList();
    SortedMap<String, List<Concept>> gates = gates(reviews.of(schoolClass));
    return all.stream().map(each -> verdict(each, drills, gates)).toList();
  }

  /** A readiness drill and what a learner answered in it. */
  private record Begun(String drill, List<Response> answers) {}

  private Verdict verdict(
      Learner learner, List<Assignment> drills, Map<String, List<Concept>> gates) {
    List<Concept> gate = gates.getOrDefault(learner.nickname(), List.of());
    List<Begun> begun =
        drills.stream()
            .filter(each -> each.terms().isFor(learner.id()))
            .map(each -> new Begun(each.id(), responses.of(learner.id(), each.id())))
            .filter(each -> !each.answers().isEmpty())
            .sorted(Comparator.comparing((Begun each) -> each.answers().get(0).answeredAt()))
            .toList();
    if (begun.isEmpty()) {
      return new Verdict(learner.id(), learner.nickname(), null, null, 0, 0, 0, gate);
    }
    Begun latest = begun.get(begun.size() - 1);
    List<Boolean> counted = counted(latest.answers());
    int right = (int) counted.stream().filter(each -> each).count();
    return new Verdict(
        learner.id(),
        learner.nickname(),
        latest.drill(),
        SequentialTest.USUAL.stand(counted),
        right,
        counted.size(),
        begun.size(),
        gate);
  }

  /** Whether each answer was right, in their order, without the rapid ones. */
  static List<Boolean> counted(List<Response> answers) {
    return answers.stream().filter(each -> !each.rapid()).map(Response::correct).toList();
  }

  private static SortedMap<String, List<Concept>> gates(Review review) {
    SortedMap<String, List<Concept>> gates = new TreeMap<>();
    for (LearnerState each : review.learners()) {
      Concept concept = Term.parse(Concept.class, each.concept());
      if (concept.isSafetyCritical() && 1 - each.knows() >= GATE) {
        gates.computeIfAbsent(each.learner(), nickname -> new ArrayList<>()).add(concept);
      }
    }
    return gates;
  }
}
