package withy.usecase;

import java.time.Clock;
import java.util.List;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/** Draws items for learners, and draws them again from what was kept of them. */
final class Issuing {
  private final Clock clock;
  private final Secrets secrets;

  Issuing(Clock clock, Secrets secrets) {
    this.clock = clock;
    this.secrets = secrets;
  }

  /** A new item for a learner, from a seed that nobody can guess. */
  Issue draw(Practice practice, Assignment assignment, String learner, int position) {
    Concept concept = ConceptPlan.of(practice, assignment, learner).at(position);
    Composition narrowed = ConceptPlan.narrowed(assignment.composition(), concept);
    long seed = secrets.seed();
    Item item = ItemGenerator.item(practice, narrowed, seed, 0);
    return new Issue(
        secrets.id(),
        learner,
        assignment.id(),
        position,
        practice,
        concept,
        seed,
        0,
        ItemGenerator.VERSION,
        choices(item),
        Moments.now(clock));
  }

  private List<Issue.Choice> choices(Item item) {
    return item.options().stream()
        .map(each -> new Issue.Choice(secrets.optionToken(), each.value()))
        .toList();
  }

  /** Whether the generator still draws the item that was issued. */
  static boolean isCurrent(Issue issue) {
    return issue.generatorVersion() == ItemGenerator.VERSION;
  }

  static Item redraw(Issue issue, Assignment assignment) {
    Composition narrowed = ConceptPlan.narrowed(assignment.composition(), issue.concept());
    return ItemGenerator.item(issue.practice(), narrowed, issue.seed(), issue.index());
  }
}
