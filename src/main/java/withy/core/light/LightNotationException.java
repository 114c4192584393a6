package withy.core.light;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A light character that cannot be read, or that contradicts itself.
 *
 * <p>The message is one English sentence with the text and the place; {@link #reason()} and {@link
 * #arguments()} let a message bundle word it in another language.
 */
public final class LightNotationException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 80;

  private final Reason reason;
  private final transient List<String> arguments;
  private final String text;
  private final int place;

  LightNotationException(Reason reason, String text, int place, List<String> arguments) {
    super(sentence(reason, text, place, arguments));
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

  private static String sentence(Reason reason, String text, int place, List<String> arguments) {
    String what = filled(reason.wording, arguments);
    if (place == 0) {
      return what;
    }
    String shown = text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
    return what + ", in \"" + printable(shown) + "\" at character " + place;
  }

  private static String filled(String wording, List<String> arguments) {
    StringBuilder filled = new StringBuilder();
    for (String piece : wording.split("\\{", -1)) {
      boolean argument = piece.indexOf('}') == 1;
      filled.append(argument ? arguments.get(piece.charAt(0) - '0') + piece.substring(2) : piece);
    }
    return printable(filled.toString());
  }

  private static String printable(String text) {
    return text.replaceAll("\\p{Cntrl}", " ");
  }

  /** What can be wrong with a light character. */
  public enum Reason {
    EMPTY("a light character is needed, such as Fl R 4s"),
    TOO_LONG("a light character has at most {0} characters, not {1}"),
    UNKNOWN_CLASS("no class of light is written \"{0}\""),
    UNKNOWN_COLOUR("no colour of light is written \"{0}\""),
    COLOUR_TWICE("{0} names the colour {1} twice"),
    ONE_COLOUR_ALTERNATES("an alternating light shows two colours or more, not {0}"),
    COLOURS_OUTNUMBER_FLASHES("{0} colours need as many flashes or more, not {1}"),
    TRAILING("\"{0}\" does not belong to a light character"),
    GROUP_NOT_TAKEN("{0} takes no group such as ({1})"),
    GROUP_MISSING("{0} needs a group such as (3)"),
    LETTERS_MISSING("Mo needs letters such as (A)"),
    GROUP_UNREADABLE("a group is written like (3), (2+1) or (A), not \"{0}\""),
    GROUP_NUMBER("a group counts {0} to {1} flashes, not {2}"),
    GROUPS_ALIKE("the groups of ({0}) are alike; a composite group has different ones"),
    MORSE_LETTERS("Mo takes one to {0} letters from A to Z, not \"{1}\""),
    PERIOD_NOT_TAKEN("a fixed light has no period, not even {0} s"),
    PERIOD_NOT_POSITIVE("a period is longer than 0 s, not {0} s"),
    PERIOD_TOO_LONG("a period is at most {0} s, not {1} s"),
    NUMBER_UNREADABLE("\"{0}\" is no number that belongs here"),
    TIME_TOO_FINE("times have at most three decimals, not {0} s"),
    UNIT_MISSING("{0} needs a unit: s, m, ft or M"),
    STATED_TWICE("the {0} is stated twice"),
    RANGE_COLOUR("a range is stated for {0}, which is none of the colours"),
    RANGE_COUNT("{0} ranges do not go with {1} colours"),
    RATE("{0} means {1} to {2} flashes a minute, not {3}"),
    DOES_NOT_FIT("the flashes of {0} do not fit into a period of {1} s"),
    TIMINGS_UNREADABLE("the timings cannot be read from \"{0}\""),
    TIMINGS_NOT_TAKEN("a fixed light has no timings"),
    TIMINGS_ZERO("a stated flash or eclipse lasts longer than 0 s"),
    TIMINGS_NOT_ALTERNATELY("the timings of {0} state light and eclipse by turns"),
    TIMINGS_NOT_PERIOD("the timings add up to {0} s but the period is {1} s"),
    TIMINGS_NOT_GROUP("the timings show {0} where {1} means {2}"),
    TIMINGS_DISAGREE("the timings are stated twice and differently"),
    TIMINGS_COLOURS("the colours of the timings are not those of {0}"),
    LIGHT_NOT_EQUAL_TO_DARK("an isophase light is as long as its eclipse, not {0} s and {1} s"),
    LIGHT_NOT_LONGER("the light of {0} is longer than the eclipse, not {1} s to {2} s"),
    DARK_NOT_LONGER("the eclipse of {0} is longer than the light, not {1} s to {2} s"),
    FLASH_TOO_LONG("the flash of {0} is shorter than 2 s, not {1} s"),
    FLASH_TOO_SHORT("the long flash of {0} lasts 2 s or more, not {1} s"),
    FLASHES_UNLIKE("the flashes and eclipses of {0} do not differ as {1} s and {2} s do"),
    GROUPS_NOT_APART("the groups of {0} do not stand apart in the timings"),
    LETTERS_NOT_SHOWN("the dots and dashes of {0} are not those of the timings"),
    ECLIPSE_IN_ALTERNATION("an alternating light has no eclipse");

    private final String wording;

    Reason(String wording) {
      this.wording = wording;
    }

    /** The name under which a message bundle keeps the wording: {@code light.unknown-class}. */
    public String key() {
      return "light." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
