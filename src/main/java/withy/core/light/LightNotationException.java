package withy.core.light;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A light character that cannot be read, or that contradicts itself.
 *
 * <p>The message is a note for the log; the sentence for a person is made by a message bundle from
 * {@link #reason()}, {@link #arguments()}, {@link #text()} and {@link #place()}.
 */
public final class LightNotationException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final Reason reason;
  private final transient List<String> arguments;
  private final String text;
  private final int place;

  LightNotationException(Reason reason, String text, int place, List<String> arguments) {
    super(note(reason, place, arguments));
    this.reason = reason;
    this.arguments = List.copyOf(arguments);
    this.text = text;
    this.place = place;
  }

  LightNotationException(Reason reason, Object... arguments) {
    this(reason, "", 0, Arrays.stream(arguments).map(String::valueOf).toList());
  }

  /** The same fault, told of the text it was read from and the place where it was noticed. */
  LightNotationException in(String whole, int where) {
    return place > 0 ? this : new LightNotationException(reason, whole, where, arguments);
  }

  /** What is wrong. */
  public Reason reason() {
    return reason;
  }

  /** What the reason speaks of, in the order of its wording. */
  public List<String> arguments() {
    return arguments;
  }

  /** The text that was read, empty when the character was not read from one. */
  public String text() {
    return text;
  }

  /** Which character of the text the fault begins at, from 1; 0 when there was no text. */
  public int place() {
    return place;
  }

  private static String note(Reason reason, int place, List<String> arguments) {
    return reason.key() + arguments + (place == 0 ? "" : " at character " + place);
  }

  /** What can be wrong with a light character. */
  public enum Reason {
    EMPTY,
    TOO_LONG,
    UNKNOWN_CLASS,
    UNKNOWN_COLOUR,
    COLOUR_TWICE,
    ONE_COLOUR_ALTERNATES,
    COLOURS_OUTNUMBER_FLASHES,
    TRAILING,
    GROUP_NOT_TAKEN,
    GROUP_MISSING,
    LETTERS_MISSING,
    GROUP_UNREADABLE,
    GROUP_NUMBER,
    GROUPS_ALIKE,
    MORSE_LETTERS,
    PERIOD_NOT_TAKEN,
    PERIOD_NOT_POSITIVE,
    PERIOD_TOO_LONG,
    NUMBER_UNREADABLE,
    TIME_TOO_FINE,
    UNIT_MISSING,
    STATED_TWICE,
    RANGE_COLOUR,
    RANGE_COUNT,
    RATE,
    DOES_NOT_FIT,
    TIMINGS_UNREADABLE,
    TIMINGS_NOT_TAKEN,
    TIMINGS_ZERO,
    TIMINGS_NOT_ALTERNATELY,
    TIMINGS_NOT_PERIOD,
    TIMINGS_NOT_GROUP,
    TIMINGS_DISAGREE,
    TIMINGS_COLOURS,
    LIGHT_NOT_EQUAL_TO_DARK,
    LIGHT_NOT_LONGER,
    DARK_NOT_LONGER,
    FLASH_TOO_LONG,
    FLASH_TOO_SHORT,
    FLASHES_UNLIKE,
    GROUPS_NOT_APART,
    LETTERS_NOT_SHOWN,
    ECLIPSE_IN_ALTERNATION;

    /** The name under which a message bundle keeps the wording: {@code light.unknown-class}. */
    public String key() {
      return "light." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
