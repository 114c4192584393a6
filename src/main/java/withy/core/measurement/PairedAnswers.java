package withy.core.measurement;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * How the same learners answered such a question the time before and this time.
 *
 * @param right both times
 * @param gained wrong the time before and right this time
 * @param lost right the time before and wrong this time
 * @param wrong both times
 */
public record PairedAnswers(int right, int gained, int lost, int wrong) {
  private static final double EITHER_WAY = 0.5;

  /**
   * @throws IllegalArgumentException if a count is negative
   */
  public PairedAnswers {
    if (Math.min(Math.min(right, gained), Math.min(lost, wrong)) < 0) {
      throw new IllegalArgumentException("a count of learners is negative");
    }
  }

  public int learners() {
    return right + gained + lost + wrong;
  }

  /** How many were right the time before. */
  public int rightBefore() {
    return right + lost;
  }

  /** How many are right this time. */
  public int rightNow() {
    return right + gained;
  }

  /**
   * How likely as uneven a change comes about where learners turn one way as easily as the other, 0
   * to 1; 1 where nobody turned. The exact test of McNemar 1947 on those who turned, both ways
   * counted.
   */
  public double chance() {
    int turned = gained + lost;
    if (turned == 0) {
      return 1;
    }
    BinomialDistribution even = BinomialDistribution.of(turned, EITHER_WAY);
    return Math.min(1, 2 * even.cumulativeProbability(Math.min(gained, lost)));
  }
}
