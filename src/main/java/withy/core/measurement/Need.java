package withy.core.measurement;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many learners of a class are expected not to know a concept: what to teach next is what most
 * of them need.
 *
 * @param expected the chances of not knowing, added up: so many learners
 * @param deviation how far that may be out, as many learners more or less
 * @param heard learners who answered on it
 * @param last when the class last practised it
 */
public record Need(String concept, double expected, double deviation, int heard, Instant last) {
  private static final Comparator<Need> MOST =
      Comparator.comparingDouble(Need::expected)
          .reversed()
          .thenComparing(Need::last)
          .thenComparing(Need::concept);

  /**
   * The needs of a class, the greatest first; of equal ones the one that was not practised for
   * longest.
   *
   * @param review of these learners
   */
  public static List<Need> of(Review review, Collection<LearnerSums> learners) {
    SortedMap<String, Instant> last = new TreeMap<>();
    for (LearnerSums learner : learners) {
      learner
          .concepts()
          .forEach(
              (concept, sums) -> last.merge(concept, sums.last(), (a, b) -> a.isAfter(b) ? a : b));
    }
    List<Need> needs = new ArrayList<>();
    last.forEach((concept, moment) -> needs.add(of(concept, review, moment)));
    needs.sort(MOST);
    return List.copyOf(needs);
  }

  private static Need of(String concept, Review review, Instant last) {
    double expected = 0;
    double variance = 0;
    int heard = 0;
    for (LearnerState each : review.learners()) {
      if (each.concept().equals(concept)) {
        expected += 1 - each.knows();
        variance += each.knows() * (1 - each.knows());
        heard++;
      }
    }
    return new Need(concept, expected, StrictMath.sqrt(variance), heard, last);
  }

  /**
   * The error rate of the class where it began: by the first answer of each learner alone, before
   * any drill had taught them anything; {@link Review} holds what all answers say.
   *
   * @param classSize those who did not answer among them
   * @return by concept
   */
  public static SortedMap<String, ClassRate> beginnings(
      Collection<LearnerSums> learners, int classSize) {
    SortedMap<String, List<Tally>> first = new TreeMap<>();
    for (LearnerSums learner : learners) {
      learner
          .concepts()
          .forEach(
              (concept, sums) ->
                  first
                      .computeIfAbsent(concept, name -> new ArrayList<>())
                      .add(new Tally(1, sums.begunRight() ? 0 : 1)));
    }
    SortedMap<String, ClassRate> rates = new TreeMap<>();
    first.forEach((concept, tallies) -> rates.put(concept, ClassRate.of(tallies, classSize)));
    return rates;
  }
}
