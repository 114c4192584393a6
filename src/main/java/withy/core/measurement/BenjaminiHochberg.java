package withy.core.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Control of the share of false discoveries among many tests: Benjamini and Hochberg 1995, Journal
 * of the Royal Statistical Society B 57:289.
 */
public final class BenjaminiHochberg {
  private BenjaminiHochberg() {}

  /**
   * The adjusted p-value of each test: the smallest rate of false discoveries at which it is still
   * rejected.
   *
   * @param pValues each 0 to 1
   * @return in the order of the argument
   */
  public static List<Double> adjusted(List<Double> pValues) {
    List<Integer> largestFirst = new ArrayList<>();
    for (int i = 0; i < pValues.size(); i++) {
      largestFirst.add(i);
    }
    largestFirst.sort(Comparator.comparing((Integer i) -> pValues.get(i)).reversed());
    List<Double> adjusted = new ArrayList<>(pValues);
    double least = 1;
    int rank = pValues.size();
    for (int i : largestFirst) {
      least = Math.min(least, pValues.get(i) * pValues.size() / rank--);
      adjusted.set(i, least);
    }
    return List.copyOf(adjusted);
  }
}
