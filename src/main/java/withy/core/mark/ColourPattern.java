package withy.core.mark;

import withy.core.Term;

/**
 * How the colours of a mark share its surface; colours run from the top down, or left to right when
 * vertical.
 */
public enum ColourPattern implements Term {
  PLAIN,
  HORIZONTAL,
  VERTICAL,
  BORDER,
  DIAGONAL,
  SQUARED
}
