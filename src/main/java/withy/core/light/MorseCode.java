package withy.core.light;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The letters of the Morse code (ITU-R M.1677), dots as {@code .} and dashes as {@code -}. */
final class MorseCode {

  private static final int MOST_LETTERS = 3;
  private static final List<String> LETTERS =
      List.of(
          ".-", "-...", "-.-.", "-..", ".", "..-.", "--.", "....", "..", ".---", "-.-", ".-..",
          "--", "-.", "---", ".--.", "--.-", ".-.", "...", "-", "..-", "...-", ".--", "-..-",
          "-.--", "--..");

  private MorseCode() {}

  /** The letters in capitals, or refused. */
  static String checked(String letters) {
    String capitals = letters.toUpperCase(Locale.ROOT);
    boolean known = capitals.chars().allMatch(letter -> letter >= 'A' && letter <= 'Z');
    if (!known || capitals.isEmpty() || capitals.length() > MOST_LETTERS) {
      throw new LightNotationException(
          LightNotationException.Reason.MORSE_LETTERS, MOST_LETTERS, letters);
    }
    return capitals;
  }

  /** The signs of each letter, with a blank between letters. */
  static String signs(String letters) {
    return letters
        .chars()
        .mapToObj(letter -> LETTERS.get(letter - 'A'))
        .collect(Collectors.joining(" "));
  }

  /** The letters that these signs mean, empty when one means none. */
  static String letters(String signs) {
    StringBuilder letters = new StringBuilder();
    for (String letter : Arrays.asList(signs.split(" ", -1))) {
      int index = LETTERS.indexOf(letter);
      if (index < 0) {
        return "";
      }
      letters.append((char) ('A' + index));
    }
    return letters.length() > MOST_LETTERS ? "" : letters.toString();
  }
}
