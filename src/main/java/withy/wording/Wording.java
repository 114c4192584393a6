package withy.wording;

import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import withy.core.Term;
import withy.core.geometry.Bearing;
import withy.core.item.Message;
import withy.core.light.LightCharacter;
import withy.core.mark.Region;

/**
 * Words in one language. It says the same on every machine, whatever locale that machine has.
 *
 * <p>Safe for use by several threads.
 */
public final class Wording {
  private final Locale locale;
  private final Bundle bundle;
  private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();

  private Wording(Locale locale) {
    this.locale = locale;
    this.bundle = Bundle.of(locale);
  }

  /** The words of a locale; English ones wherever its language has none. */
  public static Wording of(Locale locale) {
    return new Wording(locale);
  }

  public Locale locale() {
    return locale;
  }

  /**
   * A message with its places filled.
   *
   * @throws IllegalArgumentException if no bundle knows its key
   */
  public String text(Message message) {
    return format(message.key(), message.arguments());
  }

  /** The text of a key, its places filled with the arguments. */
  public String text(String key, Object... arguments) {
    return format(key, List.of(arguments));
  }

  /**
   * The name of a word of the trade: the key {@code term.TYPE.ID}, as {@code
   * term.side.either-side}.
   */
  public String name(Term term) {
    return bundle.pattern(termKey(term));
  }

  /** The keys that the bundles know, in alphabetical order. */
  Set<String> keys() {
    return bundle.keys();
  }

  String pattern(String key) {
    return bundle.pattern(key);
  }

  private String format(String key, List<Object> arguments) {
    String[] words = new String[arguments.size()];
    for (int i = 0; i < words.length; i++) {
      words[i] = word(arguments.get(i));
    }
    MessageFormat format =
        formats.computeIfAbsent(key, known -> new MessageFormat(bundle.pattern(known), locale));
    synchronized (format) {
      return format.format(words);
    }
  }

  private String word(Object argument) {
    if (argument instanceof Message message) {
      return text(message);
    }
    if (argument instanceof Term term) {
      return name(term);
    }
    if (argument instanceof Bearing bearing) {
      return degrees(bearing);
    }
    if (argument instanceof LightCharacter light) {
      return new LightWords(this).phases(light);
    }
    if (argument instanceof Region region) {
      return region.name();
    }
    return argument instanceof Number number ? number(number) : argument.toString();
  }

  /** Three digits as a compass card has them, 000° to 359°. */
  private static String degrees(Bearing bearing) {
    long whole = Math.round(bearing.degrees()) % 360;
    return String.format(Locale.ROOT, "%03d°", whole);
  }

  private String number(Number number) {
    return NumberFormat.getInstance(locale).format(number);
  }

  /** {@code term.mark-kind.port-hand} for {@code MarkKind.PORT_HAND}. */
  static String termKey(Term term) {
    Class<?> type =
        term instanceof Enum<?> constant ? constant.getDeclaringClass() : term.getClass();
    String hyphened = type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-");
    return "term." + hyphened.toLowerCase(Locale.ROOT) + "." + term.id();
  }
}
