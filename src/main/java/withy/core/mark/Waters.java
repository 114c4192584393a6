package withy.core.mark;

import withy.core.Term;

/** Waters with rules of their own on top of a practice. */
public enum Waters implements Term {
  /** The Intracoastal Waterway: its yellow symbols decide (33 CFR 62.49). */
  INTRACOASTAL,
  /** The Western Rivers: sides told by the rhythm as well, numbers are miles (33 CFR 62.51). */
  WESTERN_RIVERS
}
