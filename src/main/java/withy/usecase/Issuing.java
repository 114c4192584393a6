package withy.usecase;

import java.time.Clock;
import java.util.List;
import withy.core.item.Composition;
import withy.core.item.Concept;
import withy.core.item.Item;
import withy.core.item.ItemGenerator;
import withy.core.mark.Practice;
import withy.core.response.DrillKind;

/** Draws items for learners, and draws them again from what was kept of them. */
final class Issuing {
  private final IssuedItems issuedItems;
  private final AdaptiveChoice adaptive;
  private final Clock clock;
  private final Rehearsals rehearsals;
  private final Secrets secrets;
  private final ItemSource source;

  Issuing(
      Responses responses,
      IssuedItems issuedItems,
      Clock clock,
      Secrets secrets,
      ItemSource source,
      Rehearsals rehearsals) {
    this.issuedItems = issuedItems;
    this.adaptive = new AdaptiveChoice(responses, secrets, source);
    this.rehearsals = rehearsals;
    this.clock = clock;
    this.secrets = secrets;
    this.source = source;
  }

  /**
   * A new item for a learner, from a seed that nobody can guess: the one that tells most of what
   * the answers so far leave open.
   */
  Issue draw(Practice practice, Assignment assignment, String learner, int position) {
    if (assignment.room() != null) {
      return alike(assignment.room(), assignment, learner, position);
    }
    Item item =
        switch (assignment.terms().kind()) {
          case ADAPTIVE -> adaptive(practice, assignment, learner);
          case READINESS -> sampled(practice, assignment, learner, position);
          case FIXED, REHEARSAL -> alike(practice, assignment, position);
        };
    return issue(assignment, learner, position, item.measures(), item);
  }

  private Item adaptive(Practice practice, Assignment assignment, String learner) {
    List<Concept> asked = issuedItems.concepts(learner, assignment.id());
    return adaptive.next(practice, assignment.composition(), learner, asked);
  }

  /** The item at a position of a drill in which everybody gets the same. */
  Item alike(Practice practice, Assignment assignment, int position) {
    return assignment.terms().kind() == DrillKind.REHEARSAL
        ? rehearsed(practice, assignment, position)
        : fixed(practice, assignment, position);
  }

  /** Every concept in turn. */
  private Item fixed(Practice practice, Assignment assignment, int position) {
    long seed = assignment.terms().seed();
    return fixed(source, practice, assignment.composition(), seed, position);
  }

  /** The item at a position of a fixed drill that has this seed. */
  static Item fixed(
      ItemSource source, Practice practice, Composition composition, long seed, int position) {
    Concept concept = ConceptPlan.alike(practice, composition, seed).at(position);
    return source.item(practice, ConceptPlan.narrowed(composition, concept), seed, position);
  }

  /** Mark by mark. */
  private Item rehearsed(Practice practice, Assignment assignment, int position) {
    Composition composition = assignment.composition();
    List<Item> items =
        rehearsals.of(composition.practiceFor(practice), composition, assignment.terms().seed());
    return items.get(position % items.size());
  }

  /** Any item on every concept in turn: a sample of the subject, as a test needs it. */
  private Item sampled(Practice practice, Assignment assignment, String learner, int position) {
    Concept concept = ConceptPlan.of(practice, assignment, learner).at(position);
    Composition narrowed = ConceptPlan.narrowed(assignment.composition(), concept);
    return source.item(practice, narrowed, secrets.seed(), position);
  }

  /** The item that everybody gets. */
  private Issue alike(RoomItem room, Assignment assignment, String learner, int position) {
    Item item = redraw(source, room, assignment);
    return issue(assignment, learner, position, item.measures(), item);
  }

  private Issue issue(
      Assignment assignment, String learner, int position, Concept concept, Item item) {
    return new Issue(
        secrets.id(),
        learner,
        assignment.id(),
        position,
        item.scenario().practice(),
        concept,
        item.seed(),
        item.index(),
        ItemGenerator.VERSION,
        Tokens.made(item, secrets),
        Moments.now(clock));
  }

  /** Whether the generator still draws the item that was issued. */
  static boolean isCurrent(Issue issue) {
    return issue.generatorVersion() == ItemGenerator.VERSION;
  }

  /** The item that is put to a class in its room. */
  static Item redraw(ItemSource source, RoomItem room, Assignment assignment) {
    return source.item(room.practice(), assignment.drawnFrom(), room.seed(), room.index());
  }

  static Item redraw(ItemSource source, Issue issue, Assignment assignment) {
    Composition narrowed = ConceptPlan.narrowed(assignment.drawnFrom(), issue.concept());
    return source.item(issue.practice(), narrowed, issue.seed(), issue.index());
  }
}
