package withy.core.measurement;

/**
 * How often one mark was taken for another, or known, by one learner or by several.
 *
 * @param offered how many answers had both among the options
 * @param times in how many the one was taken for the other; of a mark and itself, was known
 * @param right in how many of those offered the mark shown was known
 * @param slips the chances added up that one who knows slips into it
 */
public record PairSums(int offered, int times, int right, double slips) {
  static final PairSums NONE = new PairSums(0, 0, 0, 0);

  PairSums plus(double slip, boolean taken, boolean known) {
    return plus(new PairSums(1, taken ? 1 : 0, known ? 1 : 0, slip));
  }

  PairSums plus(PairSums more) {
    return new PairSums(
        offered + more.offered, times + more.times, right + more.right, slips + more.slips);
  }
}
