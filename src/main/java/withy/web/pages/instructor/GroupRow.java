package withy.web.pages.instructor;

import java.util.List;

/**
 * Learners who could share a boat in the practical.
 *
 * @param said who they are and that they share something, or nothing
 * @param learners each with all their answers, where nothing is shared; none elsewhere
 * @param needs what they share
 */
public record GroupRow(String said, List<Linked> learners, List<Shared> needs) {
  /** A concept that all of them most likely do not know, and the answers of each on it. */
  public record Shared(String concept, List<Linked> learners) {}
}
