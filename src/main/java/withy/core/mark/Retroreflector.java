package withy.core.mark;

import withy.core.Term;

/**
 * Sheeting that shines back in the beam of a torch.
 *
 * @param shape of the piece
 * @param colour that it shines
 */
public record Retroreflector(Shape shape, Colour colour) {
  /** The shapes of the pieces, those of R1001. */
  public enum Shape implements Term {
    BAND,
    SQUARE,
    TRIANGLE,
    CROSS
  }

  public static Retroreflector band(Colour colour) {
    return new Retroreflector(Shape.BAND, colour);
  }
}
