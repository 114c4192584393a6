package withy.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Concept;
import withy.core.item.Form;

/** Where it is looked up what learners answered the time before. */
public interface Turns {
  /**
   * Of each learner who answered an assignment of one item: whether that was right, and their last
   * answer before it to an item of the same form that measures the same concept, rapid ones apart.
   */
  List<Turn> of(Assignment assignment, Concept concept, Form form);

  /**
   * The answers of a learner to two items alike.
   *
   * @param before null if they had answered none
   */
  record Turn(@Nullable Boolean before, boolean now) {}
}
