package withy.usecase;

import java.time.Instant;

/**
 * What is kept of a session.
 *
 * @param digest of the token, from which nobody makes the token
 */
public record SessionRecord(String digest, Caller caller, Instant openedAt, Instant usedAt) {}
