package withy.core.light;

import java.math.BigDecimal;

/**
 * How high a light stands above the level that its chart names, or an eye above the water, as
 * stated.
 *
 * @param value zero or more
 * @param feet true when in feet, false when in metres
 */
public record Elevation(BigDecimal value, boolean feet) {

  private static final BigDecimal METRES_IN_FOOT = new BigDecimal("0.3048");

  /** Miles to the horizon from one metre up (Bowditch); others use 2.03 or 2.08. */
  private static final double HORIZON_FROM_METRE = 2.07;

  /** Miles to the horizon from one foot up (NAVEDTRA 14220, table 4-1). */
  private static final double HORIZON_FROM_FOOT = 1.17;

  public Elevation {
    value = value.stripTrailingZeros();
    if (value.signum() < 0) {
      throw new IllegalArgumentException("an elevation is not below zero: " + value);
    }
  }

  /** The elevation in metres. */
  public BigDecimal metres() {
    return feet ? value.multiply(METRES_IN_FOOT).stripTrailingZeros() : value;
  }

  /**
   * Nautical miles to the horizon from here; the ranges of two heights add up to the distance over
   * which one is seen from the other. Each unit has its own published coefficient, so that a height
   * given in feet and in metres differs by 2.4 %.
   */
  public double horizon() {
    return (feet ? HORIZON_FROM_FOOT : HORIZON_FROM_METRE) * StrictMath.sqrt(value.doubleValue());
  }

  /**
   * Nautical miles over which a light at this height shows above the horizon to an eye, however
   * bright it is: its geographic range.
   */
  public double geographicRange(Elevation eye) {
    return horizon() + eye.horizon();
  }

  /** As charts write it: {@code 21m}, {@code 60ft}. */
  public String notation() {
    return value.toPlainString() + (feet ? "ft" : "m");
  }
}
