package withy.core.item;

import withy.core.Term;

/** Why a track is wrong on which a boat does not touch the ground. */
public enum Fault implements Term {
  /** It passes a danger nearer than it should. */
  TOO_CLOSE,
  /** It leads into a channel that is not the one wanted. */
  WRONG_CHANNEL
}
