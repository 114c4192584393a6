package withy.core.waterway;

import withy.core.Term;

/** How to steer to keep to a leading line. */
public enum Steering implements Term {
  STEER_PORT,
  STEER_STARBOARD,
  ON_THE_LINE;

  /** The opposite helm; on the line there is none. */
  public Steering opposite() {
    return switch (this) {
      case STEER_PORT -> STEER_STARBOARD;
      case STEER_STARBOARD -> STEER_PORT;
      case ON_THE_LINE -> ON_THE_LINE;
    };
  }
}
