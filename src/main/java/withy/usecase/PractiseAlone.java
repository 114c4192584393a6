package withy.usecase;

import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Misconception;
import withy.core.measurement.ConceptSums;
import withy.core.measurement.LearnerState;
import withy.core.measurement.LearnerSums;
import withy.core.response.DrillKind;

/** Tells a learner what to practise next and why, and lets them begin. */
public final class PractiseAlone {
  private static final int LENGTH = 6;
  private static final double SETTLED = 0.8;

  private final OpenClass openClass;
  private final Assignments assignments;
  private final Responses responses;
  private final ClassReviews reviews;
  private final Clock clock;
  private final Secrets secrets;

  PractiseAlone(
      OpenClass openClass, Ports ports, ClassReviews reviews, Clock clock, Secrets secrets) {
    this.openClass = openClass;
    this.assignments = ports.assignments();
    this.responses = ports.responses();
    this.reviews = reviews;
    this.clock = clock;
    this.secrets = secrets;
  }

  /**
   * What to practise next.
   *
   * @param right how many of the answers were right
   * @param belief that fits the learner's answers; null where none stands out
   * @param settled whether all is settled, and this one was only practised longest ago
   */
  public record Advice(
      Concept concept, int right, int answers, @Nullable Misconception belief, boolean settled) {}

  /**
   * The concept that is least known of those the learner has met; once all are settled, the one not
   * practised for longest, since what is met again after some time stays. Empty before the first
   * answer.
   */
  public Optional<Advice> advice(LearnerCaller learner) {
    LearnerSums sums = responses.sumsOf(learner.id()).orElse(LearnerSums.none(learner.nickname()));
    List<LearnerState> own =
        reviews.of(learner.schoolClass()).learners().stream()
            .filter(each -> each.learner().equals(learner.nickname()))
            .filter(each -> sums.concepts().containsKey(each.concept()))
            .toList();
    Optional<LearnerState> weakest =
        own.stream()
            .filter(each -> each.knows() < SETTLED)
            .min(Comparator.comparingDouble(LearnerState::knows));
    return weakest
        .map(each -> advice(each, sums, false))
        .or(() -> longestAgo(own, sums).map(each -> advice(each, sums, true)));
  }

  private static Optional<LearnerState> longestAgo(List<LearnerState> own, LearnerSums sums) {
    return own.stream().min(Comparator.comparing(each -> concept(sums, each.concept()).last()));
  }

  private static Advice advice(LearnerState state, LearnerSums sums, boolean settled) {
    ConceptSums concept = concept(sums, state.concept());
    String named = state.needsHelp() ? state.namedMisconception() : null;
    return new Advice(
        Term.parse(Concept.class, state.concept()),
        concept.answers() - concept.errors(),
        concept.answers(),
        named == null ? null : Term.parse(Misconception.class, named),
        settled);
  }

  private static ConceptSums concept(LearnerSums sums, String concept) {
    ConceptSums found = sums.concepts().get(concept);
    if (found == null) {
      throw new IllegalStateException("no sums of " + concept);
    }
    return found;
  }

  /**
   * A short drill of the learner's own on a concept; the one that is not done yet, if there is one.
   *
   * @param title under which it is listed
   * @throws Refused NOTHING_TO_DRILL where the practice of the class has no items on it
   */
  public Assignment start(LearnerCaller learner, Concept concept, String title) {
    SchoolClass own = openClass.of(learner);
    Composition items = new Composition(List.of(concept), List.of(), null, LENGTH);
    ComposeDrill.requireItems(own.practice(), items);
    return assignments.of(own.id()).stream()
        .filter(each -> isOpen(each, learner, items))
        .findFirst()
        .orElseGet(() -> begin(learner, items, title));
  }

  private boolean isOpen(Assignment drill, LearnerCaller learner, Composition items) {
    return drill.terms().own()
        && drill.terms().isFor(learner.id())
        && drill.composition().equals(items)
        && responses.answered(learner.id(), drill.id()) < LENGTH;
  }

  private Assignment begin(LearnerCaller learner, Composition items, String title) {
    DrillTerms terms = DrillTerms.own(DrillKind.ADAPTIVE, learner.id());
    Assignment begun =
        new Assignment(
            secrets.id(),
            learner.schoolClass(),
            Names.title(title),
            items,
            null,
            Moments.now(clock),
            null,
            terms);
    assignments.add(begun);
    return begun;
  }
}
