package withy.usecase;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.DrawnWaters;
import withy.core.hydrography.SurveyedWater;
import withy.core.item.Composition;
import withy.core.response.DrillKind;

/**
 * A drill that a class was asked to do.
 *
 * @param title empty when it was given none
 * @param due null when there is no hurry; answers after it are taken all the same
 * @param terms under which it is done
 * @param room the one item that all learners get alike, put to a class in its room; null of a drill
 */
public record Assignment(
    String id,
    String schoolClass,
    String title,
    Composition composition,
    @Nullable Instant due,
    Instant assignedAt,
    @Nullable RoomItem room,
    DrillTerms terms) {
  /** A drill. */
  public Assignment(
      String id,
      String schoolClass,
      String title,
      Composition composition,
      @Nullable Instant due,
      Instant assignedAt) {
    this(id, schoolClass, title, composition, due, assignedAt, null, DrillTerms.USUAL);
  }

  /** What its items are drawn from, a drawn water of the item in a room included. */
  Composition drawnFrom() {
    return room == null || room.drawn() == null
        ? composition
        : composition.in(DrawnWaters.find(room.drawn()).orElseThrow());
  }

  /** The water whose passage is rehearsed; null of any other drill. */
  public @Nullable SurveyedWater passage() {
    return terms.kind() == DrillKind.REHEARSAL ? composition.water() : null;
  }

  /** Whether no learner is given an item of it any more; answers to those given are still taken. */
  boolean isClosed() {
    return room != null && (room.revealedAt() != null || !room.isCurrent());
  }

  /** When it is due for a learner; null when there is no hurry. */
  public @Nullable Instant dueFor(String learner) {
    return terms.extensions().getOrDefault(learner, due);
  }
}
