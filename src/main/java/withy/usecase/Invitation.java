package withy.usecase;

import java.time.Instant;

/**
 * An invitation of a colleague to the school that nobody has taken yet.
 *
 * @param instructor who invites
 * @param expiresAt from when on its code is good for nothing
 */
public record Invitation(String id, String instructor, Instant madeAt, Instant expiresAt) {
  boolean isOpen(Instant now) {
    return now.isBefore(expiresAt);
  }
}
