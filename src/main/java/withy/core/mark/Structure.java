package withy.core.mark;

import withy.core.Term;

/** How a fixed mark is built, where that is more than its body shape says. */
public enum Structure implements Term {
  /** A solid tower on rock or masonry. */
  TOWER,
  /** An open framework on legs. */
  LATTICE,
  /** A single pile driven into the ground. */
  PILE,
  /** A branch or sapling stuck into the mud, a band in its colour tied on. */
  WITHY,
  /** A stake with a besom bound on, twigs spreading upwards. */
  BROOM_UP,
  /** A stake with a besom bound on, twigs spreading downwards. */
  BROOM_DOWN
}
