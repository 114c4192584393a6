package withy.core.mark;

/**
 * A region of the IALA Maritime Buoyage System. Only lateral and preferred-channel marks (and
 * channel-limit sector lights) differ between the two. Region is a property of the place, not of
 * the flag.
 */
public enum Region {
  /** Entering, red is left to port. */
  A,
  /** Entering, red is left to starboard. */
  B;

  /** The region that this one is not. */
  public Region other() {
    return this == A ? B : A;
  }
}
