package withy.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import withy.core.item.Concept;

/** Where responses are kept. */
public interface Responses {
  /**
   * Keeps a response for good: when this returns true it outlives a loss of power.
   *
   * @return false, and nothing is kept, if the item has a response, the learner used the id before,
   *     or the item was withdrawn
   */
  boolean add(StoredResponse response);

  Optional<StoredResponse> ofItem(String item);

  Optional<StoredResponse> byId(String learner, UUID id);

  /** How many items of an assignment a learner answered. */
  int answered(String learner, String assignment);

  /** How far the learners of an assignment are, by learner's id; without those at nothing. */
  Map<String, Count> counts(String assignment);

  /**
   * The misconceptions that a learner's answers named where an item measured a concept, in the
   * order of the answers.
   */
  List<String> misconceptions(String learner, Concept measured);

  /** The responses of a class, in the order in which they were stored. */
  List<StoredResponse> ofClass(String schoolClass);

  /** Changes with every response of a class. */
  Stand stand(String schoolClass);

  /** How many a learner answered, and when the last. */
  record Count(int answered, Instant last) {}

  /** By which one sees whether a class answered since. */
  record Stand(long responses, @Nullable Instant last) {}
}
