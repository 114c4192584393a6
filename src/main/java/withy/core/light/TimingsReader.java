package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.StatedTimings.Length;
import withy.core.light.Token.Kind;

/**
 * Reads the lengths of light and eclipse in the three ways in which lists and data state them.
 *
 * <pre>
 * timings  = list | brackets | sequence
 * list     = item { item }                        fl. 1.0s, ec. 3.0s
 * item     = [ colour ] ( "fl" | "lt" | "ec" ) number [ "s" ]
 * brackets = "[" number { number } "]"            [1;1;1;10]
 * sequence = length { "+" length }                00.3+(00.7)
 * length   = number [ "s" ] | "(" number [ "s" ] ")"
 * </pre>
 *
 * <p>Brackets name light and eclipse by turns, of an occulting light the eclipse first (S-12), of
 * an alternating light only lights; in a sequence the eclipses stand in brackets (S-57 SIGSEQ).
 */
final class TimingsReader {

  private static final String[] LIGHT = {"fl", "lt"};
  private static final String[] DARK = {"ec"};

  private final TokenStream tokens;
  private final LightClass lightClass;

  TimingsReader(TokenStream tokens, LightClass lightClass) {
    this.tokens = tokens;
    this.lightClass = lightClass;
  }

  /** Whether timings come next. */
  boolean comes() {
    return tokens.peek().is("[") || itemComes() || sequenceComes();
  }

  StatedTimings read() {
    if (tokens.peek().is("[")) {
      return new StatedTimings(brackets());
    }
    return new StatedTimings(itemComes() ? list() : sequence());
  }

  private boolean itemComes() {
    boolean coloured = Colours.in(tokens.peek()).size() == 1;
    return tokens.comesWord(0, LIGHT)
        || tokens.comesWord(0, DARK)
        || coloured && tokens.comesWord(1, LIGHT);
  }

  private boolean sequenceComes() {
    if (tokens.peek().is("(")) {
      return tokens.peek(1).is(Kind.NUMBER);
    }
    boolean number = tokens.peek().is(Kind.NUMBER);
    int after = Quantities.secondsCome(tokens, 1) ? 2 : 1;
    return number && tokens.peek(after).is("+");
  }

  private List<Length> list() {
    List<Length> lengths = new ArrayList<>();
    while (itemComes()) {
      List<LightColour> colour = tokens.comesWord(0, LIGHT) ? List.of() : Colours.in(tokens.peek());
      if (!colour.isEmpty()) {
        tokens.take();
      }
      boolean dark = tokens.takesWord(DARK);
      if (!dark) {
        tokens.take();
      }
      lengths.add(length(dark, colour.isEmpty() ? null : colour.get(0)));
    }
    return lengths;
  }

  private List<Length> brackets() {
    Token start = tokens.take();
    boolean dark =
        switch (lightClass) {
          case OCCULTING, GROUP_OCCULTING, COMPOSITE_GROUP_OCCULTING -> true;
          default -> false;
        };
    List<Length> lengths = new ArrayList<>();
    while (tokens.peek().is(Kind.NUMBER)) {
      lengths.add(length(dark, null));
      dark = !dark && lightClass != LightClass.ALTERNATING;
    }
    if (lengths.isEmpty() || !tokens.takes("]")) {
      throw tokens.fault(start, Reason.TIMINGS_UNREADABLE, tokens.restFrom(start));
    }
    return lengths;
  }

  private List<Length> sequence() {
    Token start = tokens.peek();
    List<Length> lengths = new ArrayList<>();
    do {
      boolean dark = tokens.takes("(");
      lengths.add(length(dark, null));
      if (dark && !tokens.takes(")")) {
        throw tokens.fault(start, Reason.TIMINGS_UNREADABLE, tokens.restFrom(start));
      }
    } while (tokens.takes("+"));
    return lengths;
  }

  private Length length(boolean dark, @Nullable LightColour colour) {
    Token number = tokens.take();
    int millis = Quantities.millis(tokens, number);
    if (millis == 0) {
      throw tokens.fault(number, Reason.TIMINGS_ZERO);
    }
    Quantities.takesSeconds(tokens);
    return new Length(millis, dark, colour);
  }
}
