package withy.drawing;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Structure;
import withy.core.mark.Symbol;

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

  /** The form of an appearance: stouter where it has to bear a large symbol. */
  static BodyForm of(Appearance appearance) {
    Structure structure = appearance.structure();
    if (appearance.body() == BodyShape.BEACON && structure != null) {
      return structure == Structure.TOWER
          ? new BodyForm(tower(), 0, -56, 19)
          : new BodyForm(pile(), 0, -62, 14);
    }
    return bears(appearance.symbol()) ? bearing(appearance.body()) : of(appearance.body());
  }

  private static boolean bears(@Nullable Symbol symbol) {
    return symbol != null && (symbol.isOrange() || symbol == Symbol.ANCHOR);
  }

  static BodyForm of(BodyShape shape) {
    return switch (shape) {
      case CAN -> new BodyForm(can(), 0, -38, 24);
      case CONICAL -> new BodyForm(conical(), 0, -24, 22);
      case SPHERICAL -> new BodyForm(spherical(36), 0, -22, 22);
      case PILLAR -> new BodyForm(pillar(9, 14.4), 0, -46, 15);
      case SPAR -> new BodyForm(spar(6.2, 9), 1.8, -60, 11);
      case BARREL -> new BodyForm(barrel(36), 0, -18, 20);
      case BEACON -> new BodyForm(beacon(), 0, -62, 17);
      case DAYBOARD -> new BodyForm(pile(), 0, -62, 14);
    };
  }

  private static BodyForm bearing(BodyShape shape) {
    return switch (shape) {
      case PILLAR -> new BodyForm(pillar(19, 22), 0, -38, 15);
      case SPAR -> new BodyForm(spar(16, 17), 1.8, -34, 13);
      case SPHERICAL -> new BodyForm(spherical(44), 0, -16, 14);
      case BARREL -> new BodyForm(barrel(54), 0, -16, 14);
      case CAN, CONICAL, BEACON, DAYBOARD -> of(shape);
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

  /** A sphere, a third of its height under water. */
  private static Profile spherical(double r) {
    double middle = -r / 3;
    double k = 0.5523 * r;
    double depth = DRAUGHT - 2;
    double below = (depth - middle) / r;
    double half = r * StrictMath.sqrt(1 - below * below);
    return Profile.from(0, middle - r)
        .curve(k, middle - r, r, middle - k, r, middle)
        .curve(r, middle + r * below * 0.5, r - (r - half) * 0.45, depth - 5, half, depth);
  }

  private static Profile pillar(double head, double foot) {
    return Profile.from(head, -144)
        .line(foot, -31)
        .curve(foot + 0.4, -27, foot + 1.6, -26, foot + 4.6, -26)
        .line(29.5, -25.6)
        .curve(32.5, -25.4, 34, -24, 34, -21)
        .line(33.4, 0)
        .line(31, DRAUGHT);
  }

  private static Profile spar(double head, double foot) {
    return Profile.from(head, -128)
        .curve(head + 0.8, -128, head + 0.8, -127.4, head + 0.8, -126.4)
        .line(foot, DRAUGHT);
  }

  private static Profile barrel(double height) {
    double h = height / 36;
    return Profile.from(32, -36 * h)
        .curve(37, -36 * h, 40, -30 * h, 41, -20 * h)
        .curve(42, -12 * h, 42, -6, 41, 0)
        .line(37, DRAUGHT);
  }

  private static Profile beacon() {
    return Profile.from(15, -132).line(15, -126).line(12.5, -122).line(17.5, -13).line(20, DRAUGHT);
  }

  private static Profile tower() {
    return Profile.from(21, -134)
        .line(21, -126)
        .line(17.5, -122)
        .line(25, -12)
        .line(28, -12)
        .line(29, DRAUGHT);
  }

  private static Profile pile() {
    return Profile.from(8.6, -128).line(9.6, DRAUGHT);
  }
}
