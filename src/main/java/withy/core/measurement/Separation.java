package withy.core.measurement;

import withy.core.Term;

/**
 * What a corrected point-biserial coefficient says of an item: how far it sets those who do well
 * elsewhere apart from those who do not. The bounds are Ebel's guide for discrimination (from
 * memory).
 */
public enum Separation implements Term {
  /** Those who are right do worse elsewhere: key or wording may be at fault. */
  REVERSED,
  /** Hardly any: doubt the question before the learners. */
  POOR,
  MARGINAL,
  GOOD,
  VERY_GOOD;

  private static final double MARGINAL_FROM = 0.20;
  private static final double GOOD_FROM = 0.30;
  private static final double VERY_GOOD_FROM = 0.40;

  /**
   * What a coefficient says.
   *
   * @param coefficient -1 to 1
   */
  public static Separation of(double coefficient) {
    if (coefficient < 0) {
      return REVERSED;
    }
    if (coefficient < MARGINAL_FROM) {
      return POOR;
    }
    if (coefficient < GOOD_FROM) {
      return MARGINAL;
    }
    return coefficient < VERY_GOOD_FROM ? GOOD : VERY_GOOD;
  }
}
