package withy.core.measurement;

/**
 * How often one learner took one mark for another.
 *
 * @param offered how many answers had both among the options
 * @param times in how many the one was taken for the other
 * @param slips the chances added up that one who knows slips into it
 */
public record PairSums(int offered, int times, double slips) {
  static final PairSums NONE = new PairSums(0, 0, 0);

  PairSums plus(double slip, boolean taken) {
    return new PairSums(offered + 1, times + (taken ? 1 : 0), slips + slip);
  }
}
