package withy.core.mark;

import withy.core.Term;

/** The shape of the body of a mark. */
public enum BodyShape implements Term {
  CAN,
  CONICAL,
  SPHERICAL,
  PILLAR,
  SPAR,
  BARREL,
  BEACON,
  DAYBOARD
}
