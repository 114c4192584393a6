package withy.core.mark;

import java.util.Optional;

/**
 * The numbers of marks: they grow with the conventional direction; red is even and green odd in
 * both regions (33 CFR 62.43(a), and recommended by IALA R1001).
 */
public final class NumberRules {
  private NumberRules() {}

  /** Whether marks of a kind are numbered; others may bear letters. */
  public static boolean isNumbered(MarkKind kind) {
    return kind.isLateral();
  }

  /** The parity of the numbers on marks of a colour; empty for a colour that is not lateral. */
  public static Optional<Parity> parity(Colour colour) {
    return switch (colour) {
      case RED -> Optional.of(Parity.EVEN);
      case GREEN -> Optional.of(Parity.ODD);
      default -> Optional.empty();
    };
  }

  /** The parity of the numbers on marks of a kind in a region; empty for an unnumbered kind. */
  public static Optional<Parity> parity(Region region, MarkKind kind) {
    if (!isNumbered(kind)) {
      return Optional.empty();
    }
    boolean port = kind.equals(MarkKind.PORT_HAND);
    return parity(port ? region.portHand() : region.starboardHand());
  }
}
