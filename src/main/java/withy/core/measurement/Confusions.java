package withy.core.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * Which mark is taken for which, counted in learners.
 *
 * <p>Somebody who knows the marks still slips, into each wrong option alike. A pair that n learners
 * were offered, in k answers, is slipped into at least once by one of them with the chance q = 1 -
 * (1-r)^(k/n), where r is the mean of slip/(options - 1) over the answers. The tail of the binomial
 * distribution of n and q says how odd the learners are who took one for the other; the tails of
 * all pairs offered are adjusted together ({@link BenjaminiHochberg}).
 */
final class Confusions {
  private static final String IDENTIFY = "identify";
  private static final int FEWEST_LEARNERS = 3;
  private static final double LARGEST_P = 0.10;
  private static final Comparator<Confusion> MOST_TELLING =
      Comparator.comparingDouble(Confusion::adjustedP)
          .thenComparing(Comparator.comparingInt(Confusion::learners).reversed())
          .thenComparing(Confusion::shown)
          .thenComparing(Confusion::answered);

  private final Map<Pair, Count> pairs = new TreeMap<>();

  private Confusions() {}

  /** All pairs offered by items that ask for the kind of a mark, the most telling first. */
  static List<Confusion> of(List<Response> answers) {
    Confusions confusions = new Confusions();
    answers.stream().filter(r -> r.form().equals(IDENTIFY)).forEach(confusions::count);
    return confusions.tested();
  }

  private void count(Response answer) {
    double slip = LearnerModel.SLIP / (answer.offered().size() - 1);
    for (OfferedOption option : answer.offered()) {
      if (!option.value().equals(answer.key())) {
        Pair pair = new Pair(answer.key(), option.value());
        boolean taken = option.value().equals(answer.option());
        pairs.computeIfAbsent(pair, p -> new Count()).add(answer.learner(), slip, taken);
      }
    }
  }

  private List<Confusion> tested() {
    List<Double> tails = pairs.values().stream().map(Count::tail).toList();
    List<Double> adjusted = BenjaminiHochberg.adjusted(tails);
    List<Confusion> tested = new ArrayList<>();
    pairs.forEach((pair, count) -> tested.add(count.confusion(pair, adjusted.get(tested.size()))));
    tested.sort(MOST_TELLING);
    return List.copyOf(tested);
  }

  private record Pair(String shown, String answered) implements Comparable<Pair> {
    @Override
    public int compareTo(Pair other) {
      int first = shown.compareTo(other.shown);
      return first != 0 ? first : answered.compareTo(other.answered);
    }
  }

  private static final class Count {
    private final Set<String> asked = new LinkedHashSet<>();
    private final Set<String> taken = new LinkedHashSet<>();
    private int offered;
    private int times;
    private double slips;

    void add(String learner, double slip, boolean took) {
      offered++;
      slips += slip;
      asked.add(learner);
      if (took) {
        times++;
        taken.add(learner);
      }
    }

    double tail() {
      double slip = slips / offered;
      double once = 1 - StrictMath.pow(1 - slip, (double) offered / asked.size());
      return BinomialDistribution.of(asked.size(), once).survivalProbability(taken.size() - 1);
    }

    Confusion confusion(Pair pair, double adjusted) {
      boolean listed = taken.size() >= FEWEST_LEARNERS && adjusted <= LARGEST_P;
      return new Confusion(
          pair.shown(), pair.answered(), taken.size(), times, offered, adjusted, listed);
    }
  }
}
