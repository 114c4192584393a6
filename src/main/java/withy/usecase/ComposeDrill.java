package withy.usecase;

import java.util.List;
import java.util.stream.IntStream;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/** Shows an instructor what a drill would ask. */
public final class ComposeDrill {
  private final ItemSource source;

  ComposeDrill(ItemSource source) {
    this.source = source;
  }

  /**
   * Items that the composition may draw, with their keys.
   *
   * @throws Refused NOTHING_TO_DRILL
   */
  public List<Item> sample(Practice practice, Composition composition, long seed, int count) {
    requireItems(practice, composition);
    return IntStream.range(0, count)
        .mapToObj(index -> source.item(practice, composition, seed, index))
        .toList();
  }

  /**
   * How often a learner meets a concept.
   *
   * @param least that everybody does
   * @param most that anybody does, at most one more
   */
  public record Share(Concept concept, int least, int most) {}

  /** How a drill divides its items among what it can measure; empty if it has nothing. */
  public List<Share> shares(Practice practice, Composition composition) {
    List<Concept> concepts = measurable(practice, composition);
    int length = composition.length();
    return concepts.stream().map(each -> share(each, length, concepts.size())).toList();
  }

  private static Share share(Concept concept, int length, int among) {
    int least = length / among;
    return new Share(concept, least, length % among == 0 ? least : least + 1);
  }

  /**
   * An item of the composition on one of its concepts, with its key.
   *
   * @throws Refused NOTHING_TO_DRILL
   */
  public Item specimen(Practice practice, Composition composition, Concept concept, long seed) {
    Composition narrowed = ConceptPlan.narrowed(composition, concept);
    return sample(practice, narrowed, seed, 1).get(0);
  }

  /** The concepts that the composition can measure, in syllabus order; empty if it has nothing. */
  public List<Concept> measurable(Practice practice, Composition composition) {
    return ItemGenerator.measurable(practice, composition);
  }

  static void requireItems(Practice practice, Composition composition) {
    if (ItemGenerator.measurable(practice, composition).isEmpty()) {
      throw new Refused(Reason.NOTHING_TO_DRILL);
    }
  }
}
