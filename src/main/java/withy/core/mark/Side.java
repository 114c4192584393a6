package withy.core.mark;

import withy.core.Term;

/** How a boat passes a mark. */
public enum Side implements Term {
  LEAVE_TO_PORT,
  LEAVE_TO_STARBOARD,
  EITHER_SIDE,
  KEEP_CLEAR;

  /** The other hand; a side that is no hand stays what it is. */
  public Side opposite() {
    return switch (this) {
      case LEAVE_TO_PORT -> LEAVE_TO_STARBOARD;
      case LEAVE_TO_STARBOARD -> LEAVE_TO_PORT;
      case EITHER_SIDE -> EITHER_SIDE;
      case KEEP_CLEAR -> KEEP_CLEAR;
    };
  }
}
