package withy.usecase;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** What people may call themselves, their classes and their drills. */
final class Names {
  static final int LONGEST_NICKNAME = 24;
  static final int LONGEST = 60;

  /** Begins with a letter or digit, so that no spreadsheet takes a nickname for a formula. */
  private static final Pattern NICKNAME =
      Pattern.compile("[\\p{L}\\p{Nd}][\\p{L}\\p{M}\\p{Nd} '’.-]*");

  /** No control, format (with the marks that turn the direction), private or lone characters. */
  private static final Pattern UNSEEN = Pattern.compile("[\\p{C}\\p{Zl}\\p{Zp}]");

  private Names() {}

  /** The nickname as it is kept. */
  static String nickname(String typed) {
    String name = tidy(typed);
    if (!NICKNAME.matcher(name).matches() || length(name) > LONGEST_NICKNAME) {
      throw new Refused(Reason.NICKNAME_UNFIT, LONGEST_NICKNAME);
    }
    return name;
  }

  /** The name of an instructor or a class as it is kept. */
  static String name(String typed) {
    String name = title(typed);
    if (name.isEmpty()) {
      throw new Refused(Reason.NAME_UNFIT, LONGEST);
    }
    return name;
  }

  /** A title as it is kept, which may be empty. */
  static String title(String typed) {
    String title = tidy(typed);
    if (UNSEEN.matcher(title).find() || length(title) > LONGEST) {
      throw new Refused(Reason.NAME_UNFIT, LONGEST);
    }
    return title;
  }

  /** One form for all ways of writing a name, with which it is compared. */
  static String folded(String name) {
    String folded = name.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT).replace('’', '\'');
    return Normalizer.normalize(folded, Normalizer.Form.NFKC);
  }

  private static String tidy(String typed) {
    String composed = Normalizer.normalize(typed, Normalizer.Form.NFC);
    return composed.strip().replaceAll("\\p{Zs}+", " ").strip();
  }

  private static int length(String name) {
    return name.codePointCount(0, name.length());
  }
}
