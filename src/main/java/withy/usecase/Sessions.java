package withy.usecase;

import java.time.Instant;
import java.util.Optional;

/** Where sessions are kept, so that they outlive a restart. */
public interface Sessions {
  void add(SessionRecord session);

  Optional<SessionRecord> find(String digest);

  void use(String digest, Instant when);

  void remove(String digest);

  /** Removes the sessions of instructors and of learners that were last used before. */
  void removeUnused(Instant instructorsBefore, Instant learnersBefore);
}
