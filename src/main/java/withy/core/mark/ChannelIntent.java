package withy.core.mark;

import withy.core.Term;

/** Which of two channels at a junction the boat wants. */
public enum ChannelIntent implements Term {
  PREFERRED,
  SECONDARY;

  /** What becomes of the side that is told for the preferred channel. */
  Side apply(Side preferred) {
    return this == PREFERRED ? preferred : preferred.opposite();
  }
}
