package withy.core.mark;

import withy.core.Term;

/**
 * What is painted or fitted on the body of a mark beside its colours. The orange ones (33 CFR
 * 62.33; Canada uses the same shapes) go with two orange bands round the white body, one near the
 * top and one above the waterline.
 */
public enum Symbol implements Term {
  DIAMOND,
  DIAMOND_CROSS,
  CIRCLE,
  SQUARE,
  ANCHOR,
  DIVER_FLAG,
  /** On the Intracoastal Waterway: leave to port, whatever the mark is (33 CFR 62.49). */
  YELLOW_SQUARE,
  /** On the Intracoastal Waterway: leave to starboard, whatever the mark is. */
  YELLOW_TRIANGLE,
  /** On the Intracoastal Waterway: no side, only the way. */
  YELLOW_BAND;

  /** Whether the symbol is orange and goes with two orange bands. */
  public boolean isOrange() {
    return ordinal() <= SQUARE.ordinal();
  }

  /** Whether it tells on the Intracoastal Waterway on which side its mark is left. */
  public boolean decidesSide() {
    return this == YELLOW_SQUARE || this == YELLOW_TRIANGLE;
  }

  /** Whether the symbol is one of the Intracoastal Waterway. */
  public boolean isIntracoastal() {
    return ordinal() >= YELLOW_SQUARE.ordinal();
  }
}
