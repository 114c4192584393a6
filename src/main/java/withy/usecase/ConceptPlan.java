package withy.usecase;

import java.math.BigInteger;
import java.util.List;
import withy.core.Chance;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/**
 * Which concept the item at a position of a learner's drill measures: all that the composition can
 * measure in rounds, each round in an order of the learner's own, so that everybody meets every
 * concept as often (give or take one) and neighbours do not meet them together.
 */
final class ConceptPlan {
  private final List<Concept> concepts;
  private final long seed;

  private ConceptPlan(List<Concept> concepts, long seed) {
    this.concepts = concepts;
    this.seed = seed;
  }

  /**
   * The plan of a learner for an assignment.
   *
   * @throws Refused NOTHING_TO_DRILL
   */
  static ConceptPlan of(Practice practice, Assignment assignment, String learner) {
    List<Concept> concepts = concepts(practice, assignment.composition());
    return new ConceptPlan(concepts, seed(assignment.id() + learner));
  }

  private static List<Concept> concepts(Practice practice, Composition composition) {
    List<Concept> concepts = ItemGenerator.measurable(practice, composition);
    if (concepts.isEmpty()) {
      throw new Refused(Reason.NOTHING_TO_DRILL);
    }
    return concepts;
  }

  /**
   * The plan that is the same for everybody.
   *
   * @param seed of the drill, from which its items are drawn too
   * @throws Refused NOTHING_TO_DRILL
   */
  static ConceptPlan alike(Practice practice, Composition composition, long seed) {
    return new ConceptPlan(concepts(practice, composition), seed);
  }

  /** The order is no secret, so ids, which are random, may decide it. */
  private static long seed(String ids) {
    return new BigInteger(Secrets.digest(ids), 16).longValue();
  }

  /** How often each concept was measured before the position, give or take one. */
  int round(int position) {
    return position / concepts.size();
  }

  Concept at(int position) {
    return Chance.of(seed, round(position)).shuffled(concepts).get(position % concepts.size());
  }

  /** What is left of a composition when it is to measure one concept. */
  static Composition narrowed(Composition composition, Concept concept) {
    return composition.about(concept);
  }
}
