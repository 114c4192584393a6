package withy.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where invitations are kept, of their codes only the digests. */
public interface Invitations {
  void add(Invitation invitation, String digest);

  /** The invitation of a code, expired or not. */
  Optional<Invitation> byCode(String digest);

  /** An instructor's invitations, the newest first. */
  List<Invitation> of(String instructor);

  void remove(String id);

  /** Forgets those that had expired at a time. */
  void removeExpired(Instant at);

  /** What becomes of a colleague who takes an invitation. */
  enum Outcome {
    JOINED,
    NAME_TAKEN,
    /** The invitation was taken or withdrawn meanwhile. */
    GONE
  }

  /**
   * Keeps an instructor and forgets the invitation, all or nothing, so that a code works once.
   *
   * @param folded the name in the form in which names are compared
   */
  Outcome take(Invitation invitation, InstructorAccount account, String folded);
}
