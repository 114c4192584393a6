package withy.core.light;

import java.math.BigDecimal;

/**
 * How high a light stands above the level that its chart names, as stated.
 *
 * @param value zero or more
 * @param feet true when in feet, false when in metres
 */
public record Elevation(BigDecimal value, boolean feet) {

  private static final BigDecimal METRES_IN_FOOT = new BigDecimal("0.3048");

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

  /** As charts write it: {@code 21m}, {@code 60ft}. */
  public String notation() {
    return value.toPlainString() + (feet ? "ft" : "m");
  }
}
