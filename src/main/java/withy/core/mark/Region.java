package withy.core.mark;

/**
 * A region of the IALA Maritime Buoyage System. Only lateral and preferred-channel marks (and
 * channel-limit sector lights) differ between the two. Region is a property of the place, not of
 * the flag.
 */
public enum Region {
  /** Entering, red is left to port. */
  A(Colour.RED, Colour.GREEN),
  /** Entering, red is left to starboard. */
  B(Colour.GREEN, Colour.RED);

  private final Colour portHand;
  private final Colour starboardHand;

  Region(Colour portHand, Colour starboardHand) {
    this.portHand = portHand;
    this.starboardHand = starboardHand;
  }

  /** The colour of marks left to port with the conventional direction. */
  public Colour portHand() {
    return portHand;
  }

  /** The colour of marks left to starboard with the conventional direction. */
  public Colour starboardHand() {
    return starboardHand;
  }

  /** The region that this one is not. */
  public Region other() {
    return this == A ? B : A;
  }
}
