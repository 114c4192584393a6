package withy.core.response;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An option as it was offered, and the misconceptions that lead to it.
 *
 * @param value not empty, without white space or equals sign
 * @param misconception the one that it names; null on the key; {@value #UNEXPLAINED} on a wrong
 *     option that no belief explains; null on a wrong option is taken for the same
 * @param also other misconceptions that lead to it in this item; empty where none is known
 */
public record OfferedOption(String value, @Nullable String misconception, List<String> also) {
  /** Stands in place of a misconception where no belief leads to the option. */
  public static final String UNEXPLAINED = "unexplained";

  /**
   * @throws InvalidResponse when the value or a misconception is no plain word
   */
  public OfferedOption {
    also = List.copyOf(also);
    if (!isPlain(value) || (misconception != null && !isPlain(misconception))) {
      throw new InvalidResponse(ResponseFlaw.MALFORMED_OPTION, value + "=" + misconception);
    }
    for (String each : also) {
      if (!isPlain(each)) {
        throw new InvalidResponse(ResponseFlaw.MALFORMED_OPTION, value + "=" + each);
      }
    }
  }

  /** An option to which nothing leads but what it names. */
  public OfferedOption(String value, @Nullable String misconception) {
    this(value, misconception, List.of());
  }

  /** The belief that leads to this option, or null where none does. */
  public @Nullable String belief() {
    return UNEXPLAINED.equals(misconception) ? null : misconception;
  }

  /** Whether somebody who holds a belief is led to this option. */
  public boolean tempts(String holder) {
    return holder.equals(misconception) || also.contains(holder);
  }

  /** The same with the belief that it names alone. */
  public OfferedOption namedAlone() {
    return also.isEmpty() ? this : new OfferedOption(value, misconception);
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
