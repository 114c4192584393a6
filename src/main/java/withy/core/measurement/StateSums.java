package withy.core.measurement;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import withy.core.response.OfferedOption;
import withy.core.response.Response;

/**
 * All that the answers of one learner on one concept say, whatever was held likely before them and
 * whichever misconceptions the class turns out to be offered: since each answer, and what is learnt
 * after it, is linear in what was believed before, it is enough to know what became of one unit of
 * belief in each state. So a state needs no history, and one answer more costs the same after ten
 * answers as after ten thousand.
 *
 * <p>Weights have one common scale, a power of two, so that no rounding comes in by it.
 *
 * @param learning share of every state but "knows" that moves to "knows" after an answer
 * @param answers how many were summed up
 * @param knows weight of one who knew from the start
 * @param guesses weight of one who guessed at the start
 * @param beliefs weight of one who held it at the start, by misconception; of one that no answer
 *     has tempted yet, which is absent, it is that of {@link #unmet}
 */
public record StateSums(
    double learning, int answers, double knows, Weight guesses, SortedMap<String, Weight> beliefs) {
  private static final double SMALL = 0x1p-400;
  private static final double SCALE = 0x1p400;

  /**
   * What became of one unit of belief in a state.
   *
   * @param stayed in it
   * @param moved to "knows", by what was learnt
   */
  public record Weight(double stayed, double moved) {
    private static final Weight ONE = new Weight(1, 0);

    private Weight after(double likelihood, double knowing, double learning) {
      double stays = stayed * likelihood;
      return new Weight(stays * (1 - learning), moved * knowing + stays * learning);
    }

    private double whole() {
      return stayed + moved;
    }

    private Weight times(double factor) {
      return new Weight(stayed * factor, moved * factor);
    }
  }

  public StateSums {
    beliefs = Collections.unmodifiableSortedMap(new TreeMap<>(beliefs));
  }

  static StateSums none(double learning) {
    return new StateSums(learning, 0, 1, Weight.ONE, new TreeMap<>());
  }

  /** The sums with one answer more, given after the others. */
  public StateSums plus(Response answer) {
    SortedMap<String, Double> believing = new TreeMap<>();
    for (String each : tempted(answer)) {
      believing.put(each, Likelihood.ofBelieving(each, answer));
    }
    return plus(Likelihood.ofKnowing(answer), Likelihood.ofGuessing(answer), believing);
  }

  /**
   * The sums with one answer more, by how likely it is in each state.
   *
   * @param believing of one who holds a belief, for every belief that was ever tempted
   */
  StateSums plus(double knowing, double guessing, SortedMap<String, Double> believing) {
    SortedMap<String, Weight> weights = new TreeMap<>();
    believing.forEach(
        (belief, likely) -> weights.put(belief, weight(belief).after(likely, knowing, learning)));
    Weight guessed = guesses.after(guessing, knowing, learning);
    return new StateSums(learning, answers + 1, knows * knowing, guessed, weights).scaled();
  }

  private SortedSet<String> tempted(Response answer) {
    SortedSet<String> names = new TreeSet<>(beliefs.keySet());
    for (OfferedOption option : answer.offered()) {
      addBelief(names, option.misconception());
      names.addAll(option.also());
    }
    addBelief(names, answer.misconception());
    return names;
  }

  private static void addBelief(SortedSet<String> names, @Nullable String misconception) {
    if (misconception != null && !misconception.equals(OfferedOption.UNEXPLAINED)) {
      names.add(misconception);
    }
  }

  private StateSums scaled() {
    double largest = Math.max(knows, guesses.whole());
    for (Weight each : beliefs.values()) {
      largest = Math.max(largest, each.whole());
    }
    if (largest > SMALL) {
      return this;
    }
    SortedMap<String, Weight> grown = new TreeMap<>();
    beliefs.forEach((name, weight) -> grown.put(name, weight.times(SCALE)));
    return new StateSums(learning, answers, knows * SCALE, guesses.times(SCALE), grown);
  }

  private Weight weight(String belief) {
    return beliefs.getOrDefault(belief, unmet());
  }

  /** What became of a belief that nothing has tempted: who holds it answers as one who knows. */
  private Weight unmet() {
    double stayed = StrictMath.pow(1 - learning, answers);
    return new Weight(knows * stayed, knows * (1 - stayed));
  }

  /**
   * The chance of each state.
   *
   * @param misconceptions the states between the first, knows, and the last, guesses
   * @param prior what was held likely of each before the answers
   * @return in the order of the prior; adds up to 1
   */
  double[] chances(List<String> misconceptions, List<Double> prior) {
    double[] chances = prior.stream().mapToDouble(Double::doubleValue).toArray();
    if (answers == 0) {
      return chances;
    }
    chances[0] *= knows;
    for (int i = 0; i < misconceptions.size(); i++) {
      share(chances, i + 1, prior, weight(misconceptions.get(i)));
    }
    share(chances, chances.length - 1, prior, guesses);
    return adjusted(chances);
  }

  /**
   * The chance of each state before the first answer, by hindsight.
   *
   * @return in the order of the prior; adds up to 1
   */
  double[] beginnings(List<String> misconceptions, List<Double> prior) {
    double[] chances = prior.stream().mapToDouble(Double::doubleValue).toArray();
    chances[0] *= knows;
    for (int i = 0; i < misconceptions.size(); i++) {
      chances[i + 1] *= weight(misconceptions.get(i)).whole();
    }
    chances[chances.length - 1] *= guesses.whole();
    return adjusted(chances);
  }

  private static double[] adjusted(double[] chances) {
    double sum = 0;
    for (double each : chances) {
      sum += each;
    }
    for (int i = 0; i < chances.length; i++) {
      chances[i] /= sum;
    }
    return chances;
  }

  private static void share(double[] chances, int state, List<Double> prior, Weight weight) {
    chances[state] = prior.get(state) * weight.stayed();
    chances[0] += prior.get(state) * weight.moved();
  }
}
