package withy.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where assignments are kept. */
public interface Assignments {
  void add(Assignment assignment);

  Optional<Assignment> find(String id);

  /** Notes when a class was shown the answer to the item in its room, unless that is noted. */
  void reveal(String id, Instant at);

  /** Notes of all else that was put to its class that the answer was shown as this was assigned. */
  void revealOthers(Assignment put);

  /** The assignments of a class, the newest first. */
  List<Assignment> of(String schoolClass);

  /** Gives one learner until later; in place of what was given before. */
  void extend(String id, String learner, Instant due);
}
