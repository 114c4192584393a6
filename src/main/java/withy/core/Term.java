package withy.core;

import java.util.List;
import java.util.Locale;

/**
 * A word of the trade that files and scripts hold on to: an enum constant known by its name in
 * lower case with hyphens, {@code LEAVE_TO_PORT} as {@code leave-to-port}, or a value that bears
 * such a word.
 */
public interface Term {
  /** The constant's name as the language gives it; of any other value its word. */
  String name();

  /** The word by which files, scripts and pages know this constant. */
  default String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The constant that a word stands for.
   *
   * @throws IllegalArgumentException if the word is none of the type's, naming those there are
   */
  static <E extends Enum<E> & Term> E parse(Class<E> type, String word) {
    return parse(List.of(type.getEnumConstants()), word);
  }

  /**
   * The one of some terms that a word stands for.
   *
   * @throws IllegalArgumentException if the word is none of theirs, naming those there are
   */
  static <T extends Term> T parse(List<T> terms, String word) {
    StringBuilder known = new StringBuilder();
    for (T each : terms) {
      if (each.id().equals(word)) {
        return each;
      }
      known.append(known.isEmpty() ? "" : ", ").append(each.id());
    }
    throw new IllegalArgumentException("'" + word + "' is none of " + known);
  }
}
