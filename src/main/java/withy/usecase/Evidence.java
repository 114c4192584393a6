package withy.usecase;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.item.Concept;
import withy.core.item.Form;

/** Where the responses behind a figure are found. */
public interface Evidence {
  /** How many there are. */
  long count(Behind which);

  /**
   * The newest of them.
   *
   * @param before only those older than this place; null from the newest on
   * @param most at least 1
   */
  List<StoredResponse> newest(Behind which, @Nullable Place before, int most);

  /**
   * The latest wrong answers that a belief led to, the newest first.
   *
   * @param concept that was measured, by its word
   * @param misconception by its word
   * @param most at least 1
   */
  List<Led> led(String schoolClass, String concept, String misconception, int most);

  /**
   * The latest answers of a class, the newest first.
   *
   * @param before only those older than this place; null from the newest on
   * @param most at least 1
   */
  List<Marked> latest(String schoolClass, @Nullable Place before, int most);

  /** The kinds of question that a class has answered, in the order of concepts, then of forms. */
  List<Kind> kinds(String schoolClass);

  /** Items of one form that measure one concept. */
  record Kind(Concept concept, Form form) {}

  /**
   * An answer and whether it was right.
   *
   * @param learner by nickname
   * @param concept that was measured, by its word
   */
  record Marked(String learner, String concept, boolean correct, Place place) {}

  /**
   * An answer that a belief led to.
   *
   * @param item by id
   * @param learner by id
   * @param seed with index and practice, from which the item was drawn
   */
  record Led(String item, String learner, String form, String key, long seed, int index) {}

  /**
   * A place in the order of responses.
   *
   * @param item tells those of one moment apart
   */
  record Place(Instant answeredAt, String item) {}
}
