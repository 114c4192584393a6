package withy.core.mark;

import withy.core.Term;

/** The kinds of navigation mark of the IALA Maritime Buoyage System (R1001, sections 2 to 7). */
public enum MarkKind implements Term {
  PORT_HAND,
  STARBOARD_HAND,
  PREFERRED_CHANNEL_TO_STARBOARD,
  PREFERRED_CHANNEL_TO_PORT,
  NORTH_CARDINAL,
  EAST_CARDINAL,
  SOUTH_CARDINAL,
  WEST_CARDINAL,
  ISOLATED_DANGER,
  SAFE_WATER,
  SPECIAL,
  EMERGENCY_WRECK;

  /** The cardinal mark of a quadrant. */
  public static MarkKind cardinal(Quadrant quadrant) {
    return values()[NORTH_CARDINAL.ordinal() + quadrant.ordinal()];
  }

  public boolean isCardinal() {
    return ordinal() >= NORTH_CARDINAL.ordinal() && ordinal() <= WEST_CARDINAL.ordinal();
  }

  public boolean isLateral() {
    return this == PORT_HAND || this == STARBOARD_HAND;
  }

  public boolean isPreferredChannel() {
    return this == PREFERRED_CHANNEL_TO_STARBOARD || this == PREFERRED_CHANNEL_TO_PORT;
  }

  /**
   * The quadrant that a cardinal mark is named after.
   *
   * @throws IllegalStateException if the mark is not cardinal
   */
  public Quadrant quadrant() {
    if (!isCardinal()) {
      throw new IllegalStateException(id() + " is no cardinal mark");
    }
    return Quadrant.values()[ordinal() - NORTH_CARDINAL.ordinal()];
  }
}
