package withy.core.course;

/**
 * How many days lie between two meetings of a concept, given the days until it is wanted: 20 to 40
 * % of them if a week is left, 5 to 10 % if a year is (Cepeda, Vul, Rohrer, Wixted and Pashler
 * 2008, Psychological Science 19:1095, from memory); between the two the share falls as a power of
 * the days, which is ours. The gap stays the same all through: widening gaps are no better
 * (Latimier, Peyre and Ramus 2021, Educational Psychology Review 33:959, g .034, not significant).
 */
public final class Spacing {
  private static final int WEEK = 7;
  private static final int YEAR = 365;
  private static final double LEAST_OF_WEEK = 0.20;
  private static final double MOST_OF_WEEK = 0.40;
  private static final double FALL_IN_A_YEAR = 0.25; // from .20 to .05, and from .40 to .10

  private Spacing() {}

  /** The gap to keep, whole days, 1 or more: the geometric middle of the band. */
  public static int gap(int daysLeft) {
    return (int)
        Math.max(1, Math.round(daysLeft * StrictMath.sqrt(least(daysLeft) * most(daysLeft))));
  }

  /** The shortest gap that the evidence speaks for, as a share of the days left. */
  public static double least(int daysLeft) {
    return LEAST_OF_WEEK * fall(daysLeft);
  }

  /** The longest one, as a share of the days left. */
  public static double most(int daysLeft) {
    return MOST_OF_WEEK * fall(daysLeft);
  }

  /** 1 up to a week, a quarter from a year on. */
  private static double fall(int daysLeft) {
    int within = Math.max(WEEK, Math.min(YEAR, daysLeft));
    double way = StrictMath.log((double) within / WEEK) / StrictMath.log((double) YEAR / WEEK);
    return StrictMath.pow(FALL_IN_A_YEAR, way);
  }
}
