package withy.usecase;

import java.util.Comparator;
import java.util.List;
import withy.core.Term;
import withy.core.item.Concept;
import withy.core.measurement.LearnerState;

/** Tells a learner which concepts are settled, without numbers and without comparing anybody. */
public final class OwnStanding {
  private final ClassReviews reviews;

  public OwnStanding(ClassReviews reviews) {
    this.reviews = reviews;
  }

  /** How well a learner knows a concept. */
  public enum State implements Term {
    /** Known with a chance of 0.8 or more, by two answers or more. */
    SETTLED,
    /** In between: known by one answer, or now and then. */
    WAVERING,
    /** Known with a chance below 0.4. */
    NOT_YET;

    private static final double KNOWN = 0.8;
    private static final double UNKNOWN = 0.4;
    private static final int ANSWERS = 2;

    /** How well by a state. */
    public static State of(LearnerState state) {
      if (state.knows() < UNKNOWN) {
        return NOT_YET;
      }
      return state.knows() >= KNOWN && state.answers() >= ANSWERS ? SETTLED : WAVERING;
    }
  }

  /** How well a learner knows a concept, and by how many answers. */
  public record Standing(Concept concept, State state, int answers) {}

  /** The concepts that the learner has met, in syllabus order. */
  public List<Standing> of(LearnerCaller learner) {
    return reviews.of(learner.schoolClass()).learners().stream()
        .filter(each -> each.learner().equals(learner.nickname()))
        .map(OwnStanding::standing)
        .sorted(Comparator.comparing(Standing::concept))
        .toList();
  }

  private static Standing standing(LearnerState state) {
    return new Standing(
        Term.parse(Concept.class, state.concept()), State.of(state), state.answers());
  }
}
