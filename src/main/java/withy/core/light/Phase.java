package withy.core.light;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of time in which a light shows one and the same thing.
 *
 * @param colour what is shown; null is an eclipse
 * @param millis how long, in whole milliseconds so that sums are exact; above zero
 * @param high true for the brighter flash of a fixed and flashing light
 */
public record Phase(@Nullable LightColour colour, int millis, boolean high) {

  public Phase {
    if (millis <= 0) {
      throw new IllegalArgumentException("a phase lasts longer than 0 ms, not " + millis);
    }
    if (high && colour == null) {
      throw new IllegalArgumentException("an eclipse is not bright");
    }
  }

  /** A light of ordinary brightness. */
  public static Phase light(LightColour colour, int millis) {
    return new Phase(colour, millis, false);
  }

  /** The brighter flash of a fixed and flashing light. */
  public static Phase bright(LightColour colour, int millis) {
    return new Phase(colour, millis, true);
  }

  /** A time without light. */
  public static Phase eclipse(int millis) {
    return new Phase(null, millis, false);
  }

  /** Whether no light is shown. */
  public boolean dark() {
    return colour == null;
  }

  /** Whether this phase and another show the same, however long. */
  boolean shows(Phase other) {
    return colour == other.colour && high == other.high;
  }

  Phase lasting(int otherMillis) {
    return new Phase(colour, otherMillis, high);
  }
}
