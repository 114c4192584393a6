package withy.usecase;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.Tally;
import withy.usecase.Evidence.Marked;

/**
 * What a class answered in its latest session: back to where nobody had answered for some hours. It
 * is looked up in the answers themselves, from the newest on, so it costs what the session was long
 * and not what the class has ever answered.
 */
final class LatestSession {
  /** After so long without an answer of the class a session is over; our choice, no source. */
  static final Duration REST = Duration.ofHours(6);

  /** Answers of a session at most: 60 learners with 50 each. What is longer is no one session. */
  private static final int MOST = 3_000;

  private static final int PAGE = 250;

  private final Evidence evidence;

  LatestSession(Evidence evidence) {
    this.evidence = evidence;
  }

  /**
   * A session.
   *
   * @param began with its first answer; null where it has no end within sight
   * @param tallies by nickname and concept; none where it has no end within sight
   */
  record Session(@Nullable Instant began, Map<String, Map<String, Tally>> tallies) {}

  /** The latest session of a class. */
  Session of(String schoolClass) {
    Map<String, Map<String, Tally>> tallies = new LinkedHashMap<>();
    Evidence.@Nullable Place place = null;
    for (int read = 0; read < MOST; read += PAGE) {
      List<Marked> page = evidence.latest(schoolClass, place, PAGE);
      for (Marked each : page) {
        if (place != null && isOver(each.place(), place)) {
          return new Session(place.answeredAt(), tallies);
        }
        add(tallies, each);
        place = each.place();
      }
      if (page.size() < PAGE) {
        return new Session(place == null ? null : place.answeredAt(), tallies);
      }
    }
    return new Session(null, Map.of());
  }

  private static boolean isOver(Evidence.Place earlier, Evidence.Place later) {
    return earlier.answeredAt().plus(REST).isBefore(later.answeredAt());
  }

  private static void add(Map<String, Map<String, Tally>> tallies, Marked marked) {
    tallies
        .computeIfAbsent(marked.learner(), name -> new LinkedHashMap<>())
        .merge(
            marked.concept(), Tally.of(marked.correct()), (had, one) -> had.and(marked.correct()));
  }
}
