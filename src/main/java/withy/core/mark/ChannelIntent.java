package withy.core.mark;

import withy.core.Term;

/** Which of two channels at a junction the boat wants. */
public enum ChannelIntent implements Term {
  PREFERRED,
  SECONDARY
}
