package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import withy.core.light.Token.Kind;

/**
 * Splits a light character into words, numbers and signs.
 *
 * <p>Blanks, full stops, commas, semicolons and colons only separate, but one point, comma or
 * raised point between two digits is a decimal point: {@code W.15s} is fifteen, {@code 0,3s} is
 * three tenths.
 */
final class Tokenizer {

  private static final String SEPARATORS = " \t\n\r\u00a0.,;:";
  private static final String BEFORE_POINT = " \t\n\r\u00a0;+([";
  private static final String POINTS = ".,\u00b7";

  private final String text;
  private int next = 0;

  private Tokenizer(String text) {
    this.text = text;
  }

  static List<Token> tokens(String text) {
    return new Tokenizer(text).all();
  }

  private List<Token> all() {
    List<Token> tokens = new ArrayList<>();
    while (next < text.length()) {
      char first = text.charAt(next);
      if (leadingPoint()) {
        tokens.add(token(Kind.NUMBER, digitsEnd(next + 1)));
      } else if (SEPARATORS.indexOf(first) >= 0) {
        next++;
      } else if (letter(first)) {
        tokens.add(token(Kind.WORD, wordEnd()));
      } else if (digit(next)) {
        tokens.add(token(Kind.NUMBER, numberEnd()));
      } else {
        tokens.add(token(Kind.SIGN, text.offsetByCodePoints(next, 1)));
      }
    }
    tokens.add(new Token(Kind.END, "", text.length() + 1));
    return tokens;
  }

  /** A point before digits is a decimal point unless it ends an abbreviation: {@code fl. .3s}. */
  private boolean leadingPoint() {
    boolean point = POINTS.indexOf(text.charAt(next)) >= 0 && digit(next + 1);
    return point && next > 0 && BEFORE_POINT.indexOf(text.charAt(next - 1)) >= 0;
  }

  private Token token(Kind kind, int end) {
    Token token = new Token(kind, text.substring(next, end), next + 1);
    next = end;
    return token;
  }

  private int wordEnd() {
    int end = next;
    while (end < text.length() && letter(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private int numberEnd() {
    int end = digitsEnd(next);
    boolean point = end < text.length() && POINTS.indexOf(text.charAt(end)) >= 0;
    return point && digit(end + 1) ? digitsEnd(end + 1) : end;
  }

  private int digitsEnd(int from) {
    int end = from;
    while (digit(end)) {
      end++;
    }
    return end;
  }

  private boolean digit(int index) {
    return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }

  private static boolean letter(char c) {
    return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
  }
}
