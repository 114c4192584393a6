package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import withy.core.response.Response;

/**
 * The responses that count: the first of a learner to an item, by the time of the answer, then by
 * the order in which they are listed. An item belongs to one learner and one assignment.
 */
final class FirstAnswers {
  private FirstAnswers() {}

  private record Asked(String learner, String assignment, String item) {}

  /** The first answers, in the order in which they were given. */
  static List<Response> of(Collection<Response> responses) {
    List<Response> inTime = new ArrayList<>(responses);
    inTime.sort(Comparator.comparing(Response::answeredAt));
    Set<Asked> seen = new LinkedHashSet<>();
    inTime.removeIf(r -> !seen.add(new Asked(r.learner(), r.assignment(), r.item())));
    return inTime;
  }
}
