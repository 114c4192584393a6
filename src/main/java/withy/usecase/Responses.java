package withy.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import withy.core.measurement.LearnerSums;
import withy.core.response.Response;

/** Where responses are kept. */
public interface Responses {
  /**
   * Keeps a response for good: when this returns true it outlives a loss of power.
   *
   * @return false, and nothing is kept, if the item has a response, the learner used the id before,
   *     or the item was withdrawn
   */
  boolean add(StoredResponse response);

  Optional<StoredResponse> ofItem(String item);

  Optional<StoredResponse> byId(String learner, UUID id);

  /** How many items of an assignment a learner answered. */
  int answered(String learner, String assignment);

  /** How far the learners of an assignment are, by learner's id; without those at nothing. */
  Map<String, Count> counts(String assignment);

  /** The responses of a class, in the order in which they were stored. */
  List<StoredResponse> ofClass(String schoolClass);

  /** How often each answer was given to what an assignment asks. */
  List<Chosen> chosen(String assignment);

  /** The ids of those learners of a class who have answered anything. */
  Set<String> heard(String schoolClass);

  /** How much the classes of an instructor answered, by class; also those without learners. */
  Map<String, Overview> overview(String instructor);

  /** A learner's responses to an assignment, in the order in which they were given. */
  List<Response> of(String learner, String assignment);

  /**
   * What a learner had answered on the concept that an item measures when it was issued, in the
   * order in which it was given.
   */
  List<Response> before(Issue issue);

  /** The responses to the items at one position of an assignment. */
  List<Response> atPosition(String assignment, int position);

  /** What the answers of each learner of a class add up to, of those who answered, by nickname. */
  List<LearnerSums> sums(String schoolClass);

  /** What the answers of a learner add up to; empty where there is no such learner. */
  Optional<LearnerSums> sumsOf(String learner);

  /** What the answers of those add up to who answered last, in any class; at most so many. */
  List<LearnerSums> latestSums(int most);

  /** Changes with every response of a class. */
  Stand stand(String schoolClass);

  /** How many a learner answered, and when the last. */
  record Count(int answered, Instant last) {}

  /**
   * How often an answer was given.
   *
   * @param option null for "not sure"
   */
  record Chosen(@Nullable String option, int times) {}

  /**
   * How much a class answered.
   *
   * @param last when the latest answer was given; null before the first
   */
  record Overview(int learners, long answers, @Nullable Instant last) {}

  /** By which one sees whether a class answered since. */
  record Stand(long responses, @Nullable Instant last) {}
}
