package withy.core;

import java.util.Locale;

/**
 * A word of the trade that files and scripts hold on to: an enum constant known by its name in
 * lower case with hyphens, {@code PORT_HAND} as {@code port-hand}.
 */
public interface Term {
  /** The constant's name as the language gives it. */
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
    StringBuilder known = new StringBuilder();
    for (E each : type.getEnumConstants()) {
      if (each.id().equals(word)) {
        return each;
      }
      known.append(known.isEmpty() ? "" : ", ").append(each.id());
    }
    throw new IllegalArgumentException("'" + word + "' is none of " + known);
  }
}
