package withy.core.light;

import java.math.BigDecimal;

/** Whole milliseconds as seconds in decimal digits. */
final class Seconds {

  private Seconds() {}

  static String text(int millis) {
    return BigDecimal.valueOf(millis, 3).stripTrailingZeros().toPlainString();
  }
}
