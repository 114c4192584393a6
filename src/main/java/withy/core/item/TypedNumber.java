package withy.core.item;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people type it, the same in every country: decimal point or comma, no signs between
 * thousands, the unit after it or not.
 */
final class TypedNumber {
  /** As long as a word for a number may be; ours, no source. */
  static final int LONGEST = 12;

  private static final int LONGEST_TYPED = 60;
  private static final Pattern PLAIN = Pattern.compile("-?(?:0|[1-9][0-9]*)(?:\\.[0-9]*[1-9])?");
  private static final Pattern TYPED =
      Pattern.compile("([+\\-\u2212]?)([0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)[\\s\u00a0\u202f]*(.*)");
  private static final Pattern WORD = Pattern.compile("[\\p{L}°.]*");

  private TypedNumber() {}

  /**
   * What was typed as one word: without unit, with a decimal point, without needless zeros.
   *
   * @throws UnreadableQuantity if it is no number, or followed by anything but the unit
   */
  static String word(String typed, Unit unit) {
    String text = typed.strip();
    Matcher parts = TYPED.matcher(text);
    if (text.length() > LONGEST_TYPED || !parts.matches()) {
      throw new UnreadableQuantity(UnreadableQuantity.Flaw.NO_NUMBER, typed);
    }
    requireUnit(parts.group(3), unit, typed);
    String number = parts.group(2).replace(',', '.');
    boolean negative = !parts.group(1).isEmpty() && !parts.group(1).equals("+");
    String word = word(new BigDecimal((negative ? "-0" : "0") + number));
    if (word.length() > LONGEST) {
      throw new UnreadableQuantity(UnreadableQuantity.Flaw.NO_NUMBER, typed);
    }
    return word;
  }

  private static void requireUnit(String after, Unit unit, String typed) {
    if (!after.isEmpty() && !unit.isWritten(after)) {
      boolean word = WORD.matcher(after).matches() && !after.startsWith(".");
      throw new UnreadableQuantity(
          word ? UnreadableQuantity.Flaw.OTHER_UNIT : UnreadableQuantity.Flaw.NO_NUMBER, typed);
    }
  }

  static String word(double value) {
    return word(BigDecimal.valueOf(value));
  }

  private static String word(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** The number that a word stands for; empty if it is none. */
  static Optional<BigDecimal> read(String word) {
    boolean plain = word.length() <= LONGEST && PLAIN.matcher(word).matches();
    return plain ? Optional.of(new BigDecimal(word)) : Optional.empty();
  }
}
