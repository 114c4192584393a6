package withy.core.measurement;

/**
 * What a sequential test comes to, summed over all courses of answers that it can take.
 *
 * @param ready chance that it says ready
 * @param notReady chance that it says not ready
 * @param undecided chance that it ends without saying either
 * @param answers how many it takes in the mean
 */
public record Outcome(double ready, double notReady, double undecided, double answers) {
  static Outcome of(SequentialTest test, double share) {
    double[] open = {1};
    double[] ends = new double[SequentialTest.Stand.values().length];
    double mean = 0;
    for (int answer = 1; answer <= test.most(); answer++) {
      double[] next = new double[answer + 1];
      for (int right = 0; right < open.length; right++) {
        next[right + 1] += open[right] * share;
        next[right] += open[right] * (1 - share);
        mean += open[right];
      }
      open = close(test, answer, next, ends);
    }
    return new Outcome(
        ends[SequentialTest.Stand.READY.ordinal()],
        ends[SequentialTest.Stand.NOT_READY.ordinal()],
        ends[SequentialTest.Stand.UNDECIDED.ordinal()],
        mean);
  }

  /** Takes out what is decided after as many answers; what is left goes on. */
  private static double[] close(SequentialTest test, int answers, double[] open, double[] ends) {
    for (int right = 0; right < open.length; right++) {
      SequentialTest.Stand stand = test.stand(right, answers - right);
      if (stand != SequentialTest.Stand.GO_ON) {
        ends[stand.ordinal()] += open[right];
        open[right] = 0;
      }
    }
    return open;
  }
}
