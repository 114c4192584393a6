package withy.core.light;

import java.math.BigDecimal;
import withy.core.light.LightNotationException.Reason;

/** Numbers with their units. */
final class Quantities {

  private static final int MOST_DIGITS = 9;
  private static final BigDecimal MOST_SECONDS = BigDecimal.valueOf(300);
  private static final String[] SECONDS = {"s", "sec", "secs", "second", "seconds"};

  private Quantities() {}

  static boolean secondsCome(TokenStream tokens, int ahead) {
    return tokens.comesWord(ahead, SECONDS) || tokens.peek(ahead).is("\"");
  }

  /** Takes the unit of time when it comes. */
  static boolean takesSeconds(TokenStream tokens) {
    return tokens.takesWord(SECONDS) || tokens.takes("\"");
  }

  static BigDecimal decimal(TokenStream tokens, Token number) {
    if (!number.is(Token.Kind.NUMBER) || number.text().length() > MOST_DIGITS) {
      throw tokens.fault(number, Reason.NUMBER_UNREADABLE, number.text());
    }
    return new BigDecimal(number.text().replace(',', '.').replace('\u00b7', '.'));
  }

  static int millis(TokenStream tokens, Token number) {
    BigDecimal seconds = decimal(tokens, number).stripTrailingZeros();
    if (seconds.scale() > 3) {
      throw tokens.fault(number, Reason.TIME_TOO_FINE, number.text());
    }
    if (seconds.compareTo(MOST_SECONDS) > 0) {
      throw tokens.fault(number, Reason.PERIOD_TOO_LONG, MOST_SECONDS, seconds.toPlainString());
    }
    return seconds.movePointRight(3).intValueExact();
  }
}
