package withy.core.light;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightNotationException.Reason;
import withy.core.light.Token.Kind;

/**
 * Reads elevation and ranges.
 *
 * <pre>
 * measure = numbers ( "m" | "ft" | "M" | "nm" )        21m   60ft   15-11M
 * numbers = number { [ "-" | "/" ] number }
 * coloured = colour number [ "M" ] { colour number [ "M" ] }   W19 R16 G15
 * </pre>
 *
 * <p>Charts write m for metres of elevation and M for nautical miles of range. Since letter case
 * does not matter elsewhere: several numbers are ranges; of two measures with the same letter the
 * first is the elevation; only a single measure, or two with different letters, goes by case. A
 * comma between numbers is a decimal comma when one digit follows and the number is below ten,
 * since longer ranges are stated in whole miles: {@code 4,5M} is four and a half, {@code 15,11M}
 * are two ranges.
 */
final class HeightAndRange {

  private static final String[] MILES = {"nm", "nmi"};
  private static final String[] FEET = {"ft", "feet", "foot"};

  private final TokenStream tokens;
  private final List<Measure> measures = new ArrayList<>();
  private final List<NominalRange> coloured = new ArrayList<>();

  HeightAndRange(TokenStream tokens) {
    this.tokens = tokens;
  }

  /** Numbers with the unit as written. */
  private record Measure(List<BigDecimal> values, String unit, Token start) {

    boolean miles() {
      return values.size() > 1 || Arrays.asList(MILES).contains(unit.toLowerCase(Locale.ROOT));
    }

    boolean feet() {
      return Arrays.asList(FEET).contains(unit.toLowerCase(Locale.ROOT)) || unit.equals("'");
    }

    boolean open() {
      return !miles() && !feet();
    }
  }

  /** Whether a range with its colour comes: the colour touches a number that is no time. */
  boolean colouredComes() {
    Token colour = tokens.peek();
    boolean metres = tokens.peek(2).text().equals("m") || tokens.comesWord(2, FEET);
    return !metres
        && Colours.in(colour).size() == 1
        && tokens.peek(1).is(Kind.NUMBER)
        && colour.touches(tokens.peek(1))
        && !Quantities.secondsCome(tokens, 2);
  }

  void readColoured() {
    Token start = tokens.peek();
    if (!coloured.isEmpty()) {
      throw tokens.fault(start, Reason.STATED_TWICE, "range");
    }
    while (colouredComes()) {
      @Nullable LightColour colour = Colours.in(tokens.take()).get(0);
      Token number = tokens.take();
      coloured.add(range(colour, Quantities.decimal(tokens, number), number));
      tokens.takesWord("m", "nm", "nmi");
    }
  }

  void read() {
    Token start = tokens.peek();
    List<BigDecimal> values = new ArrayList<>();
    do {
      values.addAll(values(tokens.take()));
    } while (numberFollows());
    Token unit = tokens.take();
    boolean known =
        unit.is("'")
            || unit.is(Kind.WORD)
                && Stream.concat(Stream.of("m"), Stream.concat(Stream.of(MILES), Stream.of(FEET)))
                    .anyMatch(unit.small()::equals);
    if (!known) {
      throw tokens.fault(start, Reason.UNIT_MISSING, start.text());
    }
    measures.add(new Measure(values, unit.text(), start));
  }

  private boolean numberFollows() {
    boolean joined = tokens.peek().is("-") || tokens.peek().is("/");
    if (joined && tokens.peek(1).is(Kind.NUMBER)) {
      tokens.take();
    }
    return tokens.peek().is(Kind.NUMBER);
  }

  private List<BigDecimal> values(Token number) {
    int comma = number.text().indexOf(',');
    boolean list = comma >= 0 && (number.text().length() - comma > 2 || comma > 1);
    if (!list) {
      return List.of(Quantities.decimal(tokens, number));
    }
    Token first = new Token(Kind.NUMBER, number.text().substring(0, comma), number.place());
    Token second = number.after(comma + 1);
    return List.of(Quantities.decimal(tokens, first), Quantities.decimal(tokens, second));
  }

  private NominalRange range(@Nullable LightColour colour, BigDecimal miles, Token at) {
    if (miles.signum() == 0) {
      throw tokens.fault(at, Reason.NUMBER_UNREADABLE, at.text());
    }
    return new NominalRange(colour, miles);
  }

  Optional<Elevation> elevation() {
    List<Measure> heights = measures.stream().filter(this::height).toList();
    refuseSecond(heights, "elevation");
    return heights.stream().findFirst().map(m -> new Elevation(m.values().get(0), m.feet()));
  }

  List<NominalRange> ranges() {
    List<Measure> ranges = measures.stream().filter(measure -> !height(measure)).toList();
    refuseSecond(ranges, "range");
    if (ranges.isEmpty() || !coloured.isEmpty()) {
      ranges.stream().findFirst().ifPresent(second -> refuse(second, "range"));
      return coloured;
    }
    Measure only = ranges.get(0);
    return only.values().stream().map(miles -> range(null, miles, only.start())).toList();
  }

  private void refuseSecond(List<Measure> same, String name) {
    if (same.size() > 1) {
      refuse(same.get(1), name);
    }
  }

  private void refuse(Measure measure, String name) {
    throw tokens.fault(measure.start(), Reason.STATED_TWICE, name);
  }

  private boolean height(Measure measure) {
    if (!measure.open()) {
      return measure.feet();
    }
    boolean small = measure.unit().equals("m");
    if (!coloured.isEmpty() || measures.size() != 2) {
      return small || !coloured.isEmpty();
    }
    boolean first = measures.get(0) == measure;
    Measure other = measures.get(first ? 1 : 0);
    if (!other.open()) {
      return other.miles();
    }
    return other.unit().equals(measure.unit()) ? first : small;
  }
}
