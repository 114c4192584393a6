package withy.usecase;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.LearnerSums;
import withy.core.measurement.Review;
import withy.core.measurement.SessionChange;
import withy.core.response.Response;

/**
 * Reviews of classes, worked out anew only when a class has answered since. As in the review of an
 * exported file, the class are those who answered: one number, wherever it is read.
 */
public final class ClassReviews {
  private static final int CLASSES = 50;

  private final Responses responses;
  private final LatestSession latest;
  private final Cache<String, Reviewed> reviews =
      Caffeine.newBuilder().maximumSize(CLASSES).build();
  private final Cache<String, Changed> changes = Caffeine.newBuilder().maximumSize(CLASSES).build();

  ClassReviews(Responses responses, Evidence evidence) {
    this.responses = responses;
    this.latest = new LatestSession(evidence);
  }

  private record Reviewed(Responses.Stand stand, Review review, List<LearnerSums> sums) {
    Reviewed {
      sums = List.copyOf(sums);
    }
  }

  private record Changed(Reviewed since, Latest latest) {}

  /**
   * What changed in the latest session.
   *
   * @param began the first answer of the session; null where there is none to compare
   * @param changes by concept
   */
  public record Latest(@Nullable Instant began, List<SessionChange> changes) {
    public Latest {
      changes = List.copyOf(changes);
    }
  }

  /** The review of a class as it stands. */
  Review of(String schoolClass) {
    return reviewed(schoolClass).review();
  }

  /** What the answers add up to of those who answered, by nickname. */
  List<LearnerSums> sums(String schoolClass) {
    return reviewed(schoolClass).sums();
  }

  /** What changed in the latest session; nobody but who asks for it waits for it. */
  Latest latest(String schoolClass) {
    Reviewed reviewed = reviewed(schoolClass);
    return changes
        .asMap()
        .compute(
            schoolClass,
            (id, before) ->
                before != null && before.since() == reviewed
                    ? before
                    : new Changed(reviewed, latest(reviewed, id)))
        .latest();
  }

  private Latest latest(Reviewed reviewed, String id) {
    LatestSession.Session session = latest.of(id);
    return new Latest(session.began(), SessionChange.of(reviewed.sums(), session.tallies()));
  }

  private Reviewed reviewed(String schoolClass) {
    Responses.Stand stand = responses.stand(schoolClass);
    return reviews.asMap().compute(schoolClass, (id, before) -> renewed(id, stand, before));
  }

  private Reviewed renewed(String id, Responses.Stand stand, @Nullable Reviewed before) {
    if (before != null && before.stand().equals(stand)) {
      return before;
    }
    List<LearnerSums> sums = responses.sums(id);
    return new Reviewed(stand, Review.ofSums(sums, sums.size()), sums);
  }

  /** The ids of those of a class who have answered anything. */
  Set<String> heard(String schoolClass) {
    return responses.heard(schoolClass);
  }

  /** How much the classes of an instructor answered, by class. */
  Map<String, Responses.Overview> overview(String instructor) {
    return responses.overview(instructor);
  }

  /** The responses of a class in the order in which they were stored. */
  List<Response> responses(String schoolClass) {
    return responses.ofClass(schoolClass).stream().map(StoredResponse::response).toList();
  }
}
