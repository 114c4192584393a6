package withy.drawing;

import withy.core.mark.BodyShape;

/**
 * The proportions of a body, in units of which a pillar's tower has 118. Heights are negative above
 * the water, as on a screen; every body reaches a little below it.
 *
 * @param heel degrees that it leans to the right
 * @param letters height of the middle of its number or letter
 * @param letterSize greatest size of the number or letter
 */
record BodyForm(Profile profile, double heel, double letters, double letterSize) {
  private static final double DRAUGHT = 9;

  static BodyForm of(BodyShape shape) {
    return switch (shape) {
      case CAN -> new BodyForm(can(), 0, -38, 24);
      case CONICAL -> new BodyForm(conical(), 0, -24, 22);
      case SPHERICAL -> new BodyForm(spherical(), 0, -22, 22);
      case PILLAR -> new BodyForm(pillar(), 0, -46, 15);
      case SPAR -> new BodyForm(spar(), 1.8, -60, 11);
      case BARREL -> new BodyForm(barrel(), 0, -18, 20);
      case BEACON -> new BodyForm(beacon(), 0, -62, 17);
      case DAYBOARD -> new BodyForm(pile(), 0, -96, 22);
    };
  }

  /** The top of the body, where a lantern or a staff stands. */
  double top() {
    return profile.top();
  }

  private static Profile can() {
    return Profile.from(25.8, -74).curve(27, -74, 27, -73.4, 27, -72).line(27, DRAUGHT);
  }

  private static Profile conical() {
    return Profile.from(5, -86)
        .curve(5.6, -86, 6, -85.4, 6.4, -84.4)
        .line(31, -13)
        .curve(32, -10, 32, -9, 32, -5)
        .line(31, DRAUGHT);
  }

  /** A sphere of radius 36, a third of its height under water. */
  private static Profile spherical() {
    double r = 36;
    double middle = -12;
    double k = 0.5523 * r;
    return Profile.from(0, middle - r)
        .curve(k, middle - r, r, middle - k, r, middle)
        .curve(r, middle + k * 0.55, r - 2.4, middle + 14, r - 5.5, DRAUGHT - 2);
  }

  private static Profile pillar() {
    return Profile.from(9, -144)
        .line(14.4, -31)
        .curve(14.8, -27, 16, -26, 19, -26)
        .line(29.5, -25.6)
        .curve(32.5, -25.4, 34, -24, 34, -21)
        .line(33.4, 0)
        .line(31, DRAUGHT);
  }

  private static Profile spar() {
    return Profile.from(6.2, -128).curve(7, -128, 7, -127.4, 7, -126.4).line(9, DRAUGHT);
  }

  private static Profile barrel() {
    return Profile.from(32, -36)
        .curve(37, -36, 40, -30, 41, -20)
        .curve(42, -12, 42, -6, 41, 0)
        .line(37, DRAUGHT);
  }

  private static Profile beacon() {
    return Profile.from(15, -132).line(15, -126).line(12.5, -122).line(17.5, -13).line(20, DRAUGHT);
  }

  private static Profile pile() {
    return Profile.from(4.4, -122).line(5, DRAUGHT);
  }
}
