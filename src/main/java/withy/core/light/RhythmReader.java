package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.Token.Kind;

/**
 * Reads class and group.
 *
 * <pre>
 * rhythm  = class [ "(" group ")" ] [ "+" "LFl" [ "(1)" ] ]
 * group   = number { "+" number } | letters
 * class   = a spelling of {@link ClassSpelling}, with "Gp" before it in older lists
 * </pre>
 */
final class RhythmReader {

  private static final int DIGITS = 4;

  private final TokenStream tokens;

  RhythmReader(TokenStream tokens) {
    this.tokens = tokens;
  }

  Rhythm read() {
    Token start = tokens.peek();
    ClassSpelling.Found found =
        ClassSpelling.take(tokens)
            .orElseThrow(() -> tokens.fault(start, Reason.UNKNOWN_CLASS, word(start)));
    refuseHalfWord(start);
    Token bracket = tokens.peek();
    try {
      return rhythm(found);
    } catch (LightNotationException fault) {
      throw fault.place() > 0
          ? fault
          : tokens.fault(bracket, fault.reason(), fault.arguments().toArray());
    }
  }

  private String word(Token start) {
    return start.is(Kind.WORD) ? start.text() : tokens.rest();
  }

  /** {@code Flash} is no class with a colour: what is left of a word must be colours. */
  private void refuseHalfWord(Token start) {
    Token left = tokens.peek();
    boolean half =
        left.place() > start.place() && left.place() < start.place() + start.text().length();
    if (half && Colours.in(left).isEmpty()) {
      throw tokens.fault(start, Reason.UNKNOWN_CLASS, start.text());
    }
  }

  private Rhythm rhythm(ClassSpelling.Found found) {
    LightClass lightClass = found.lightClass();
    if (lightClass == LightClass.MORSE) {
      return Rhythm.ofMorse(letters());
    }
    List<Integer> group = tokens.peek().is("(") && !remark() ? group() : List.of();
    if (found.grouped() && group.isEmpty()) {
      throw new LightNotationException(Reason.GROUP_MISSING, "Gp " + lightClass.abbreviation());
    }
    if (tokens.peek().is("+")) {
      return Rhythm.of(withLongFlash(lightClass), group);
    }
    List<Integer> told = group.equals(List.of(1)) ? List.of() : group;
    return Rhythm.of(lightClass.withGroup(told), group);
  }

  private LightClass withLongFlash(LightClass lightClass) {
    Token plus = tokens.take();
    Token start = tokens.peek();
    boolean longFlash =
        ClassSpelling.take(tokens)
            .filter(found -> found.lightClass() == LightClass.LONG_FLASHING)
            .isPresent();
    refuseHalfWord(start);
    boolean one = tokens.peek().is("(") && tokens.peek(1).text().equals("1");
    if (one && !group().equals(List.of(1))) {
      throw tokens.fault(start, Reason.GROUP_UNREADABLE, "LFl(1");
    }
    if (longFlash && lightClass == LightClass.QUICK) {
      return LightClass.GROUP_QUICK_AND_LONG_FLASH;
    }
    if (longFlash && lightClass == LightClass.VERY_QUICK) {
      return LightClass.GROUP_VERY_QUICK_AND_LONG_FLASH;
    }
    throw tokens.fault(plus, Reason.UNKNOWN_CLASS, lightClass.abbreviation() + "+" + start.text());
  }

  /** Whether the bracket holds words or timings, not a group. */
  private boolean remark() {
    return tokens.comesWord(1, "no");
  }

  private List<Integer> group() {
    Token bracket = tokens.take();
    List<Integer> group = new ArrayList<>();
    do {
      group.add(number(bracket));
    } while (tokens.takes("+"));
    if (!tokens.takes(")")) {
      throw unreadable(bracket);
    }
    return group;
  }

  private int number(Token bracket) {
    Token number = tokens.take();
    boolean whole = number.text().chars().allMatch(digit -> digit >= '0' && digit <= '9');
    if (!number.is(Kind.NUMBER) || !whole || number.text().length() > DIGITS) {
      throw unreadable(bracket);
    }
    return Integer.parseInt(number.text());
  }

  private String letters() {
    Token bracket = tokens.peek();
    if (!tokens.takes("(")) {
      throw new LightNotationException(Reason.LETTERS_MISSING);
    }
    String letters = tokens.take().text();
    if (!tokens.takes(")")) {
      throw unreadable(bracket);
    }
    return letters;
  }

  private LightNotationException unreadable(Token bracket) {
    return tokens.fault(bracket, Reason.GROUP_UNREADABLE, tokens.restFrom(bracket));
  }
}
