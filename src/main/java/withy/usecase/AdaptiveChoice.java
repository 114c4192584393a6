package withy.usecase;

import java.util.ArrayList;
import java.util.List;
import withy.core.Chance;
import withy.core.Term;
import withy.core.drill.NextConcept;
import withy.core.drill.Standing;
import withy.core.drill.TellingItem;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.measurement.LearnerSums;

/** The next item of a drill that follows what a learner's answers leave open. */
final class AdaptiveChoice {
  /** An item in water takes as long to draw as so many others. */
  private static final int WATER = 8;

  private final Responses responses;
  private final Diagnoses diagnoses;
  private final Secrets secrets;
  private final ItemSource source;

  AdaptiveChoice(Responses responses, Secrets secrets, ItemSource source) {
    this.responses = responses;
    this.diagnoses = new Diagnoses(responses);
    this.secrets = secrets;
    this.source = source;
  }

  /**
   * The next item.
   *
   * @param asked the concepts of the items before, the latest last
   * @throws Refused NOTHING_TO_DRILL
   */
  Item next(Practice practice, Composition composition, String learner, List<Concept> asked) {
    LearnerSums sums = responses.sumsOf(learner).orElse(LearnerSums.none(learner));
    List<Standing> standings = new ArrayList<>();
    for (Concept each : ItemGenerator.measurable(practice, composition)) {
      standings.add(new Standing(diagnoses.of(sums, each)));
    }
    if (standings.isEmpty()) {
      throw new Refused(Reason.NOTHING_TO_DRILL);
    }
    List<String> before = asked.stream().map(Term::id).toList();
    Chance chance = Chance.of(secrets.seed(), before.size());
    String chosen = NextConcept.leastSettled(standings, before, chance).concept();
    Concept concept = Term.parse(Concept.class, chosen);
    return TellingItem.of(
        diagnoses.of(sums, concept), candidates(practice, composition.about(concept)), chance);
  }

  private List<Item> candidates(Practice practice, Composition about) {
    List<Item> drawn = new ArrayList<>();
    int cost = 0;
    for (int index = 0; cost < TellingItem.CANDIDATES; index++) {
      Item item = source.item(practice, about, secrets.seed(), index);
      cost += item.scenario().sailing() == null ? 1 : WATER;
      drawn.add(item);
    }
    return drawn;
  }
}
