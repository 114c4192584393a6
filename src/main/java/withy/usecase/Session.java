package withy.usecase;

import java.time.Instant;

/**
 * What lets a caller in.
 *
 * @param token known to the caller alone
 * @param requestToken without which nothing is changed in the caller's name
 * @param expires when it ends unless it is used before
 */
public record Session(String token, String requestToken, Caller caller, Instant expires) {
  @Override
  public String toString() {
    return "Session[" + caller.id() + "]"; // tokens belong in no log
  }
}
