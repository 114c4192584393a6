package withy.core.mark;

import withy.core.Term;

/**
 * Towards which end an upright board narrows, as leading boards do where the two make one shape.
 */
public enum Taper implements Term {
  UP,
  DOWN
}
