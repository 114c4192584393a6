package withy.core.light;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How far a light is seen in clear weather, as stated.
 *
 * @param colour the colour this range is stated for; null when it is told by the order only
 * @param miles nautical miles, above zero
 */
public record NominalRange(@Nullable LightColour colour, BigDecimal miles) {

  public NominalRange {
    miles = miles.stripTrailingZeros();
    if (miles.signum() <= 0) {
      throw new IllegalArgumentException("a range is above zero: " + miles);
    }
  }

  /** As lists write it, without the unit: {@code 15}, {@code W19}. */
  String notation() {
    return (colour == null ? "" : colour.abbreviation()) + miles.toPlainString();
  }
}
