package withy.core.response;

import org.jspecify.annotations.Nullable;

/**
 * An option as it was offered, and the misconception that leads to it.
 *
 * @param value not empty, without white space or equals sign
 * @param misconception null on the key; {@value #UNEXPLAINED} on a wrong option that no belief
 *     explains; null on a wrong option is taken for the same
 */
public record OfferedOption(String value, @Nullable String misconception) {
  /** Stands in place of a misconception where no belief leads to the option. */
  public static final String UNEXPLAINED = "unexplained";

  /**
   * @throws InvalidResponse when the value or the misconception is no plain word
   */
  public OfferedOption {
    if (!isPlain(value) || (misconception != null && !isPlain(misconception))) {
      throw new InvalidResponse(ResponseFlaw.MALFORMED_OPTION, value + "=" + misconception);
    }
  }

  /** The belief that leads to this option, or null where none does. */
  public @Nullable String belief() {
    return UNEXPLAINED.equals(misconception) ? null : misconception;
  }

  /**
   * Whether a word can stand among others in one cell: not empty, no white space, no equals sign.
   */
  static boolean isPlain(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (word.charAt(i) == '=' || Character.isWhitespace(word.charAt(i))) {
        return false;
      }
    }
    return !word.isEmpty();
  }
}
