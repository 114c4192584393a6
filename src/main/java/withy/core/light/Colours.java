package withy.core.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads abbreviations of colours that run together: {@code WRG}, {@code BuY}. */
final class Colours {

  /** Two letters first. */
  private static final List<LightColour> BY_LENGTH =
      Arrays.stream(LightColour.values())
          .sorted(
              Comparator.comparingInt((LightColour colour) -> colour.abbreviation().length())
                  .reversed())
          .toList();

  private Colours() {}

  /** The colours that a word consists of; empty when it is no word or holds anything else. */
  static List<LightColour> in(Token token) {
    if (!token.is(Token.Kind.WORD)) {
      return List.of();
    }
    List<LightColour> colours = new ArrayList<>();
    String left = token.small();
    while (!left.isEmpty()) {
      LightColour first = first(left);
      if (first == null) {
        return List.of();
      }
      colours.add(first);
      left = left.substring(first.abbreviation().length());
    }
    return colours;
  }

  private static @Nullable LightColour first(String letters) {
    for (LightColour colour : BY_LENGTH) {
      if (letters.startsWith(colour.abbreviation().toLowerCase(Locale.ROOT))) {
        return colour;
      }
    }
    return null;
  }
}
