package withy.core.light;

import java.util.Locale;

/**
 * A word, a number or a sign of a light character.
 *
 * @param kind which of these
 * @param text as written
 * @param place of its first letter, from 1
 */
record Token(Kind kind, String text, int place) {

  enum Kind {
    WORD,
    NUMBER,
    SIGN,
    END
  }

  boolean is(Kind other) {
    return kind == other;
  }

  boolean is(String sign) {
    return kind == Kind.SIGN && text.equals(sign);
  }

  /** The word in small letters, since case does not matter. */
  String small() {
    return text.toLowerCase(Locale.ROOT);
  }

  /** Whether another token follows without anything between. */
  boolean touches(Token next) {
    return next.place == place + text.length();
  }

  /** The rest of this word after so many letters. */
  Token after(int letters) {
    return new Token(kind, text.substring(letters), place + letters);
  }
}
