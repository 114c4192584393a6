package withy.usecase;

import java.time.Clock;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;

/** Draws items for learners, and draws them again from what was kept of them. */
final class Issuing {
  /** So many that an item which fits is found, where there is one in two or three. */
  private static final int MOST_DRAWS = 20;

  private final Responses responses;
  private final Clock clock;
  private final Secrets secrets;
  private final ItemSource source;

  Issuing(Responses responses, Clock clock, Secrets secrets, ItemSource source) {
    this.responses = responses;
    this.clock = clock;
    this.secrets = secrets;
    this.source = source;
  }

  /**
   * A new item for a learner, from a seed that nobody can guess. It fits what the learner seems to
   * believe, if such an item can be had.
   */
  Issue draw(Practice practice, Assignment assignment, String learner, int position) {
    ConceptPlan plan = ConceptPlan.of(practice, assignment, learner);
    Concept concept = plan.at(position);
    Composition narrowed = ConceptPlan.narrowed(assignment.composition(), concept);
    LikelyBelief belief = LikelyBelief.of(responses.misconceptions(learner, concept));
    Item item = fitting(practice, narrowed, plan.round(position), belief);
    return new Issue(
        secrets.id(),
        learner,
        assignment.id(),
        position,
        practice,
        concept,
        item.seed(),
        item.index(),
        ItemGenerator.VERSION,
        Tokens.made(item, secrets),
        Moments.now(clock));
  }

  private Item fitting(Practice practice, Composition narrowed, int index, LikelyBelief belief) {
    Item item = source.item(practice, narrowed, secrets.seed(), index);
    for (int draws = 1; draws < MOST_DRAWS && !belief.isNamedIn(item); draws++) {
      item = source.item(practice, narrowed, secrets.seed(), index);
    }
    return item;
  }

  /** Whether the generator still draws the item that was issued. */
  static boolean isCurrent(Issue issue) {
    return issue.generatorVersion() == ItemGenerator.VERSION;
  }

  static Item redraw(ItemSource source, Issue issue, Assignment assignment) {
    Composition narrowed = ConceptPlan.narrowed(assignment.composition(), issue.concept());
    return source.item(issue.practice(), narrowed, issue.seed(), issue.index());
  }
}
