package withy.core.item;

import java.util.List;
import withy.core.Term;

/** In what a number is asked for. */
public enum Unit implements Term {
  /** 1852 m. The symbol is that of charts (INT 1, B 45). */
  NAUTICAL_MILES("M", "NM", "nm", "nmi"),
  /** Tenths of a nautical mile, 185.2 m (INT 1, B 46). */
  CABLES("cable", "cables", "cab", "cbl"),
  /** Of arc, or true on a compass card. */
  DEGREES("°", "deg"),
  METRES("m"),
  SECONDS("s");

  private final String symbol;
  private final List<String> spellings;

  Unit(String symbol, String... others) {
    this.symbol = symbol;
    this.spellings = List.of(others);
  }

  /** As charts and the open formats write it. */
  public String symbol() {
    return symbol;
  }

  /** Whether somebody who writes this means the unit; a mile is not a metre, so case matters. */
  boolean isWritten(String text) {
    return text.equals(symbol) || spellings.contains(text);
  }
}
