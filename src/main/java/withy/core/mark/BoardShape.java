package withy.core.mark;

import withy.core.Term;

/** The outline of a dayboard; a triangle points up, a diamond stands on a point. */
public enum BoardShape implements Term {
  SQUARE,
  TRIANGLE,
  DIAMOND,
  OCTAGON,
  RECTANGLE
}
