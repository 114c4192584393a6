package withy.core.measurement;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * What all answers of one learner add up to: enough for every figure of a review, and of a size
 * that does not grow with the number of answers. Answers are added in the order in which they were
 * given; that of the same item again is not added, since the first counts.
 *
 * @param learner by nickname
 * @param answers how many; the right and the rapid ones are among them
 * @param concepts by the concept that was measured
 * @param forms by form
 * @param pairs of the items that ask for the kind of a mark: each mark with every answer offered,
 *     the right one among them
 * @param last when the latest was given; null before the first
 */
public record LearnerSums(
    String learner,
    int answers,
    int right,
    int rapid,
    SortedMap<String, ConceptSums> concepts,
    SortedMap<String, FormSums> forms,
    SortedMap<MarkPair, PairSums> pairs,
    @Nullable Instant last) {
  private static final String IDENTIFY = "identify";

  public LearnerSums {
    concepts = Collections.unmodifiableSortedMap(new TreeMap<>(concepts));
    forms = Collections.unmodifiableSortedMap(new TreeMap<>(forms));
    pairs = Collections.unmodifiableSortedMap(new TreeMap<>(pairs));
  }

  /** Of a learner who has not answered. */
  public static LearnerSums none(String learner) {
    return new LearnerSums(
        learner, 0, 0, 0, new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), null);
  }

  /** Of everybody who answered, by name; only first answers count. */
  public static List<LearnerSums> of(Collection<Response> responses) {
    SortedMap<String, LearnerSums> learners = new TreeMap<>();
    for (Response each : FirstAnswers.of(responses)) {
      LearnerSums before = learners.getOrDefault(each.learner(), none(each.learner()));
      learners.put(each.learner(), before.plus(each));
    }
    return new ArrayList<>(learners.values());
  }

  /** The sums with one answer more, given after the others. */
  public LearnerSums plus(Response answer) {
    return new LearnerSums(
        learner,
        answers + 1,
        right + (answer.correct() ? 1 : 0),
        rapid + (answer.rapid() ? 1 : 0),
        conceptsWith(answer),
        formsWith(answer),
        answer.form().equals(IDENTIFY) ? pairsWith(answer) : pairs,
        answer.answeredAt());
  }

  private SortedMap<String, ConceptSums> conceptsWith(Response answer) {
    SortedMap<String, ConceptSums> more = new TreeMap<>(concepts);
    ConceptSums before = concepts.get(answer.measured());
    more.put(answer.measured(), before == null ? ConceptSums.first(answer) : before.plus(answer));
    return more;
  }

  private SortedMap<String, FormSums> formsWith(Response answer) {
    SortedMap<String, FormSums> more = new TreeMap<>(forms);
    more.put(answer.form(), forms.getOrDefault(answer.form(), FormSums.NONE).plus(answer));
    return more;
  }

  private SortedMap<MarkPair, PairSums> pairsWith(Response answer) {
    SortedMap<MarkPair, PairSums> more = new TreeMap<>(pairs);
    double slip = Likelihood.SLIP / (answer.offered().size() - 1);
    for (OfferedOption option : answer.offered()) {
      MarkPair pair = new MarkPair(answer.key(), option.value());
      boolean taken = option.value().equals(answer.option());
      PairSums before = pairs.getOrDefault(pair, PairSums.NONE);
      more.put(pair, before.plus(pair.isRight() ? 0 : slip, taken, answer.correct()));
    }
    return more;
  }
}
