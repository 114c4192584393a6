package withy.core.mark;

import withy.core.Term;

/** What marks of a kind bear written. */
public enum Numbering implements Term {
  /** Red even, green odd, growing with the conventional direction. */
  NUMBERED,
  /** Letters, no numbers. */
  LETTERED,
  /** The distance in miles from the mouth of the river, neither odd nor even by side. */
  RIVER_MILES,
  /** Words or a figure that say what is asked. */
  WORDED,
  /** The letters PRIV on two sides. */
  PRIV,
  /** Nothing. */
  BARE
}
