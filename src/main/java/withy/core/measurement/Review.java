package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import withy.core.response.Response;

/**
 * What the responses of a class say.
 *
 * <p>An item measures the first of its concepts, and the first answer of a learner to an item
 * counts: the earliest, then the one listed first. "Not sure" is an answer that is not correct.
 *
 * @param classSize learners in the class, whether they answered or not
 * @param concepts the surest to be above the tolerance first
 * @param learners by name, then concept
 * @param confusions all pairs of marks offered, the most telling first
 * @param items by form
 */
public record Review(
    int classSize,
    List<ConceptError> concepts,
    List<LearnerState> learners,
    List<Confusion> confusions,
    List<FormAnalysis> items) {
  private static final Comparator<ConceptError> WEAKEST =
      Comparator.comparingDouble((ConceptError error) -> error.rate().aboveTolerance())
          .reversed()
          .thenComparing(ConceptError::concept);
  private static final Comparator<LearnerState> BY_NAME =
      Comparator.comparing(LearnerState::learner).thenComparing(LearnerState::concept);

  public Review {
    concepts = List.copyOf(concepts);
    learners = List.copyOf(learners);
    confusions = List.copyOf(confusions);
    items = List.copyOf(items);
  }

  /** The review of a class of those who answered. */
  public static Review of(List<Response> responses) {
    return of(responses, learners(responses));
  }

  /**
   * The review of a class.
   *
   * @param classSize those who did not answer among them
   * @throws IllegalArgumentException when more learners answered than the class has
   */
  public static Review of(List<Response> responses, int classSize) {
    return ofSums(LearnerSums.of(responses), classSize);
  }

  /**
   * The review of a class by what the answers of each learner add up to; the same as that of the
   * answers themselves.
   *
   * @param learners those who answered
   * @param classSize those who did not answer among them
   * @throws IllegalArgumentException when more learners answered than the class has
   */
  public static Review ofSums(Collection<LearnerSums> learners, int classSize) {
    if (classSize < learners.size()) {
      throw new IllegalArgumentException("more learners than a class of " + classSize);
    }
    List<LearnerSums> inOrder = new ArrayList<>(learners); // so that sums round alike
    inOrder.sort(Comparator.comparing(LearnerSums::learner));
    List<ConceptError> concepts = new ArrayList<>();
    List<LearnerState> states = new ArrayList<>();
    for (ConceptAnswers each : ConceptAnswers.of(inOrder)) {
      List<LearnerState> own = each.states();
      concepts.add(each.error(classSize, own));
      states.addAll(own);
    }
    concepts.sort(WEAKEST);
    states.sort(BY_NAME);
    return new Review(
        classSize, concepts, states, Confusions.of(inOrder), ItemAnalysis.of(inOrder));
  }

  /** How many learners answered anything. */
  public static int learners(List<Response> responses) {
    return (int) responses.stream().map(Response::learner).distinct().count();
  }
}
