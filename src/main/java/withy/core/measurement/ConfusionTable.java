package withy.core.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How often each mark was taken for each other one: rows the mark shown, columns the answer (Miller
 * and Nicely 1955, Journal of the Acoustical Society of America 27:338, from memory). The answers
 * differ from item to item, so each cell counts only where its answer stood among the options.
 *
 * @param cells by the mark shown and the answer, the right one among them; none that was never
 *     offered
 */
public record ConfusionTable(SortedMap<MarkPair, PairSums> cells) {
  private static final Comparator<Alike> MOST_ALIKE =
      Comparator.comparingDouble(Alike::similarity)
          .reversed()
          .thenComparing(Alike::one)
          .thenComparing(Alike::other);

  /**
   * Two marks that are taken for each other, both ways.
   *
   * @param similarity above 0; 1 where each is as often taken for the other as known
   */
  public record Alike(String one, String other, double similarity) {}

  public ConfusionTable {
    cells = Collections.unmodifiableSortedMap(new TreeMap<>(cells));
  }

  /** The table of a class, by the items that ask for the kind of a mark. */
  public static ConfusionTable of(Collection<LearnerSums> learners) {
    SortedMap<MarkPair, PairSums> cells = new TreeMap<>();
    for (LearnerSums learner : learners) {
      learner.pairs().forEach((pair, sums) -> cells.merge(pair, sums, PairSums::plus));
    }
    return new ConfusionTable(cells);
  }

  /**
   * Two marks' likeness, free of any liking for one answer (Luce 1963, choice model, from memory):
   * the root of p(other for one) p(one for other) / (p(one for one) p(other for other)). By the
   * model it is the same whatever else is offered, so each way is counted where both were.
   *
   * @return 0 or more; NaN where it is not known: one of the two was never right beside the other
   */
  public double similarity(String one, String other) {
    double there = odds(one, other);
    double back = odds(other, one);
    return StrictMath.sqrt(there * back);
  }

  private double odds(String shown, String answered) {
    PairSums cell = cells.get(new MarkPair(shown, answered));
    return cell == null || cell.right() == 0 ? Double.NaN : (double) cell.times() / cell.right();
  }

  /** The pairs of which each was taken for the other at least once, the most alike first. */
  public List<Alike> alike() {
    List<Alike> alike = new ArrayList<>();
    for (MarkPair each : cells.keySet()) {
      if (each.shown().compareTo(each.answered()) < 0) {
        double similarity = similarity(each.shown(), each.answered());
        if (similarity > 0) {
          alike.add(new Alike(each.shown(), each.answered(), similarity));
        }
      }
    }
    alike.sort(MOST_ALIKE);
    return List.copyOf(alike);
  }
}
