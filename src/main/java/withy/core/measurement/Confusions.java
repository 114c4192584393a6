package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.BinomialDistribution;

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
  private static final int FEWEST_LEARNERS = 3;
  private static final double LARGEST_P = 0.10;
  private static final Comparator<Confusion> MOST_TELLING =
      Comparator.comparingDouble(Confusion::adjustedP)
          .thenComparing(Comparator.comparingInt(Confusion::learners).reversed())
          .thenComparing(Confusion::shown)
          .thenComparing(Confusion::answered);

  private final SortedMap<MarkPair, Count> pairs = new TreeMap<>();

  private Confusions() {}

  /** All pairs offered by items that ask for the kind of a mark, the most telling first. */
  static List<Confusion> of(Collection<LearnerSums> learners) {
    Confusions confusions = new Confusions();
    for (LearnerSums learner : learners) {
      learner.pairs().forEach(confusions::add);
    }
    return confusions.tested();
  }

  private void add(MarkPair pair, PairSums learner) {
    if (!pair.isRight()) {
      pairs.computeIfAbsent(pair, each -> new Count()).add(learner);
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

  private static final class Count {
    private int asked;
    private int taken;
    private int offered;
    private int times;
    private double slips;

    void add(PairSums learner) {
      asked++;
      taken += learner.times() > 0 ? 1 : 0;
      offered += learner.offered();
      times += learner.times();
      slips += learner.slips();
    }

    double tail() {
      double slip = slips / offered;
      double once = 1 - StrictMath.pow(1 - slip, (double) offered / asked);
      return BinomialDistribution.of(asked, once).survivalProbability(taken - 1);
    }

    Confusion confusion(MarkPair pair, double adjusted) {
      boolean listed = taken >= FEWEST_LEARNERS && adjusted <= LARGEST_P;
      return new Confusion(pair.shown(), pair.answered(), taken, times, offered, adjusted, listed);
    }
  }
}
