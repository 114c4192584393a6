package withy.core.measurement;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;

/**
 * The interval of a share after Wilson (1927, Journal of the American Statistical Association
 * 22:209), which Brown, Cai and DasGupta (2001, Statistical Science 16:101) recommend for few
 * cases.
 */
public record WilsonInterval(double lower, double upper) {
  /**
   * The interval.
   *
   * @param part 0 to whole
   * @param whole at least 1
   * @param confidence between 0 and 1
   * @throws IllegalArgumentException outside of these
   */
  public static WilsonInterval of(int part, int whole, double confidence) {
    Interval interval =
        BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(whole, part, 1 - confidence);
    return new WilsonInterval(interval.getLowerBound(), interval.getUpperBound());
  }
}
