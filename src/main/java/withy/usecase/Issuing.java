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
    if (assignment.room() != null) {
      return alike(assignment.room(), assignment, learner, position);
    }
    ConceptPlan plan = ConceptPlan.of(practice, assignment, learner);
    Concept concept = plan.at(position);
    Composition narrowed = ConceptPlan.narrowed(assignment.composition(), concept);
    LikelyBelief belief = LikelyBelief.of(responses.misconceptions(learner, concept));
    Item item = fitting(practice, narrowed, plan.round(position), belief);
    return issue(practice, assignment, learner, position, concept, item);
  }

  /** The item that everybody gets. */
  private Issue alike(RoomItem room, Assignment assignment, String learner, int position) {
    Item item = source.item(room.practice(), assignment.drawnFrom(), room.seed(), room.index());
    return issue(room.practice(), assignment, learner, position, item.measures(), item);
  }

  private Issue issue(
      Practice practice,
      Assignment assignment,
      String learner,
      int position,
      Concept concept,
      Item item) {
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
    Composition narrowed = ConceptPlan.narrowed(assignment.drawnFrom(), issue.concept());
    return source.item(issue.practice(), narrowed, issue.seed(), issue.index());
  }
}
