package withy.core.simulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import withy.core.measurement.LearnerState;

/** What the statistics say after as many items of many learners, beside what was planted. */
final class Found {
  private static final double FALSE_ALARMS = 0.10;
  private static final double LISTED_FROM = 0.80;
  private static final double NAMED_FROM = 0.60;

  private final List<Double> known = new ArrayList<>();
  private final List<Double> unknown = new ArrayList<>();
  private int held;
  private int named;
  private int namedSurely;
  private int mastered;
  private int begunUnknown;

  /**
   * Adds one learner and concept.
   *
   * @param begun what was planted at first
   * @param now what holds after what was learnt
   */
  void add(PlantedState begun, PlantedState now, LearnerState state) {
    (now.knows() ? known : unknown).add(1 - state.knows());
    begunUnknown += begun.knows() ? 0 : 1;
    mastered += !begun.knows() && now.knows() ? 1 : 0;
    String belief = now.belief();
    if (belief != null) {
      held++;
      double chance = state.misconceptions().getOrDefault(belief, 0.0);
      named += belief.equals(state.likelyBelief()) ? 1 : 0;
      namedSurely += chance >= NAMED_FROM ? 1 : 0;
    }
  }

  /** The share found at the threshold that one in ten of the known is above; ties count half. */
  double recall() {
    if (known.isEmpty() || unknown.isEmpty()) {
      return Double.NaN;
    }
    List<Double> sorted = new ArrayList<>(known);
    Collections.sort(sorted);
    double allowed = FALSE_ALARMS * sorted.size();
    double threshold = sorted.get((int) StrictMath.ceil(sorted.size() - allowed) - 1);
    long above = known.stream().filter(each -> each > threshold).count();
    long ties = known.stream().filter(each -> each == threshold).count();
    double share = ties == 0 ? 0 : Math.min(1, Math.max(0, (allowed - above) / ties));
    double found = unknown.stream().filter(each -> each > threshold).count();
    found += share * unknown.stream().filter(each -> each == threshold).count();
    return found / unknown.size();
  }

  double flagged() {
    return ratio(listed(unknown), unknown.size());
  }

  double precision() {
    return ratio(listed(unknown), listed(unknown) + listed(known));
  }

  double named() {
    return ratio(named, held);
  }

  double namedSurely() {
    return ratio(namedSurely, held);
  }

  double mastered() {
    return ratio(mastered, begunUnknown);
  }

  private static long listed(List<Double> chances) {
    return chances.stream().filter(each -> each >= LISTED_FROM).count();
  }

  private static double ratio(double part, double whole) {
    return whole == 0 ? Double.NaN : part / whole;
  }
}
