package withy.core.light;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.Token.Kind;

/**
 * Reads a light character. Letter case does not matter; what separates is in {@link Tokenizer}.
 *
 * <pre>
 * light   = rhythm [ colours ] { period | measure | coloured | timings | remark | colours }
 * colours = colour { colour }                    W   WRG   W.R.G.   BuY
 * period  = [ "period" | "per" | "ev" | "every" ] number "s"
 * remark  = "(" "no" "timings" ")"               a list that states none
 * </pre>
 *
 * <p>The rest is at {@link RhythmReader}, {@link HeightAndRange} and {@link TimingsReader}. Colours
 * and period stand once; without a colour the light is white. Timings may be stated twice when they
 * agree. Words after the character are refused.
 */
final class NotationParser {

  private static final int LONGEST = 2000;

  private final String text;
  private final TokenStream tokens;
  private final HeightAndRange measures;
  private final Rhythm rhythm;
  private final TimingsReader timingsReader;
  private final List<LightColour> colours = new ArrayList<>();
  private final List<StatedTimings> timings = new ArrayList<>();
  private OptionalInt period = OptionalInt.empty();
  private int periodPlace = 1;
  private int timingsPlace = 0;

  private NotationParser(String text) {
    this.text = text;
    this.tokens = new TokenStream(text);
    this.measures = new HeightAndRange(tokens);
    if (tokens.atEnd()) {
      throw tokens.fault(tokens.peek(), Reason.EMPTY);
    }
    this.rhythm = new RhythmReader(tokens).read();
    this.timingsReader = new TimingsReader(tokens, rhythm.lightClass());
  }

  static LightCharacter parse(String text) {
    if (text.length() > LONGEST) {
      throw new LightNotationException(Reason.TOO_LONG, LONGEST, text.length());
    }
    return new NotationParser(text).read();
  }

  private LightCharacter read() {
    readColours();
    while (!tokens.atEnd()) {
      readPart();
    }
    return character();
  }

  private void readPart() {
    if (remark()) {
      return;
    }
    if (timingsReader.comes()) {
      timingsPlace = tokens.peek().place();
      timings.add(timingsReader.read());
    } else if (periodComes()) {
      readPeriod();
    } else if (measures.colouredComes()) {
      measures.readColoured();
    } else if (tokens.peek().is(Kind.NUMBER)) {
      measures.read();
    } else if (colours.isEmpty() && !Colours.in(tokens.peek()).isEmpty()) {
      readColours();
    } else {
      throw tokens.fault(tokens.peek(), Reason.TRAILING, tokens.rest());
    }
  }

  private boolean remark() {
    boolean comes =
        tokens.peek().is("(")
            && tokens.comesWord(1, "no")
            && tokens.comesWord(2, "timings")
            && tokens.peek(3).is(")");
    for (int i = 0; comes && i < 4; i++) {
      tokens.take();
    }
    return comes;
  }

  private void readColours() {
    Token token = tokens.peek();
    while (token.is(Kind.WORD) && !nextPart(token)) {
      List<LightColour> more = Colours.in(token);
      if (more.isEmpty()) {
        throw tokens.fault(token, Reason.UNKNOWN_COLOUR, token.text());
      }
      colours.addAll(more);
      tokens.take();
      token = tokens.peek();
    }
  }

  /**
   * Whether a word does not belong to the colours any more. Before the flashes of a list it does,
   * {@code Q R fl. 0.3s}, unless an alternating light has named its colours already.
   */
  private boolean nextPart(Token word) {
    boolean range = !colours.isEmpty() && measures.colouredComes();
    boolean colour = !Colours.in(word).isEmpty();
    boolean ofTiming = rhythm.lightClass().alternates() && colours.size() > 1;
    boolean timing = timingsReader.comes() && (!colour || ofTiming);
    boolean trailing = !colours.isEmpty() && !colour;
    return range || timing || trailing || periodWord();
  }

  private boolean periodWord() {
    return tokens.comesWord(0, "period", "per", "ev", "every");
  }

  private boolean periodComes() {
    boolean negative = tokens.peek().is("-") && tokens.peek(1).is(Kind.NUMBER);
    return periodWord()
        || negative
        || tokens.peek().is(Kind.NUMBER) && Quantities.secondsCome(tokens, 1);
  }

  private void readPeriod() {
    Token start = tokens.peek();
    if (periodWord()) {
      tokens.take();
    }
    boolean negative = tokens.takes("-");
    Token number = tokens.take();
    int millis = Quantities.millis(tokens, number);
    if (!Quantities.takesSeconds(tokens)) {
      throw tokens.fault(number, Reason.UNIT_MISSING, number.text());
    }
    if (negative || millis == 0) {
      String shown = (negative ? "-" : "") + number.text();
      throw tokens.fault(number, Reason.PERIOD_NOT_POSITIVE, shown);
    }
    if (period.isPresent()) {
      throw tokens.fault(start, Reason.STATED_TWICE, "period");
    }
    period = OptionalInt.of(millis);
    periodPlace = number.place();
  }

  private LightCharacter character() {
    List<LightColour> shown = colours.isEmpty() ? List.of(LightColour.WHITE) : colours;
    try {
      return new LightCharacter(
          rhythm, shown, period, measures.elevation(), measures.ranges(), phases(shown));
    } catch (LightNotationException contradiction) {
      throw contradiction.in(text, timingsPlace > 0 ? timingsPlace : periodPlace);
    }
  }

  private List<Phase> phases(List<LightColour> shown) {
    List<Phase> phases = List.of();
    for (StatedTimings stated : timings) {
      List<Phase> more = stated.phases(rhythm, shown, period);
      if (!phases.isEmpty() && !same(phases, more)) {
        throw new LightNotationException(Reason.TIMINGS_DISAGREE);
      }
      phases = phases.isEmpty() ? more : phases;
    }
    return phases;
  }

  private static boolean same(List<Phase> phases, List<Phase> more) {
    return new LightTimeline(phases, false).sameRhythmAs(new LightTimeline(more, false));
  }
}
