package withy.core.item;

import withy.core.Term;

/** A mistaken belief that leads to a wrong answer. */
public enum Misconception implements Term {
  /** M01: takes the colours of the other region. */
  REGION_SWAPPED,
  /** M02: leaves a mark on the same side whichever way the boat travels. */
  DIRECTION_IGNORED,
  /** No known belief explains the option. */
  UNEXPLAINED
}
