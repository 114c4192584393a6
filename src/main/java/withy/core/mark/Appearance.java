package withy.core.mark;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * All that can be seen of a mark by day and at night.
 *
 * @param colours of the body: from the top down, or from left to right when the pattern is
 *     vertical; of a dayboard those inside its border
 * @param symbol painted or fitted on the body; null where there is none
 * @param board of a dayboard; null on every other body
 * @param structure of a fixed mark; null where the body shape says all
 * @param topmark null where none is fitted
 * @param light null where the mark is unlit
 */
public record Appearance(
    BodyShape body,
    ColourPattern pattern,
    List<Colour> colours,
    @Nullable Symbol symbol,
    @Nullable Board board,
    @Nullable Structure structure,
    @Nullable Topmark topmark,
    @Nullable LightCharacter light) {
  /**
   * @throws IllegalArgumentException if there is no colour, a plain body has more than one, or a
   *     board is not on a dayboard
   */
  public Appearance {
    colours = List.copyOf(colours);
    if (colours.isEmpty() || (pattern == ColourPattern.PLAIN) != (colours.size() == 1)) {
      throw new IllegalArgumentException("a " + pattern.id() + " body cannot have " + colours);
    }
    if (board != null && body != BodyShape.DAYBOARD) {
      throw new IllegalArgumentException("a " + body.id() + " has no board");
    }
  }

  /** A mark without symbol, board and structure. */
  public Appearance(
      BodyShape body,
      ColourPattern pattern,
      List<Colour> colours,
      @Nullable Topmark topmark,
      @Nullable LightCharacter light) {
    this(body, pattern, colours, null, null, null, topmark, light);
  }

  /** The same mark built another way; null for one whose body shape says all. */
  public Appearance built(@Nullable Structure otherwise) {
    return new Appearance(body, pattern, colours, symbol, board, otherwise, topmark, light);
  }

  /** The same mark with a symbol painted on, or with none. */
  public Appearance bearing(@Nullable Symbol painted) {
    return new Appearance(body, pattern, colours, painted, board, structure, topmark, light);
  }

  /** The same mark on the body of another, with that one's board and structure. */
  public Appearance bodied(Appearance other) {
    return new Appearance(
        other.body, pattern, colours, symbol, other.board, other.structure, topmark, light);
  }

  /** The same mark in the colours of another, with that one's symbol. */
  public Appearance painted(Appearance other) {
    return new Appearance(
        body, other.pattern, other.colours, other.symbol, board, structure, topmark, light);
  }

  /** The same mark with another topmark, or with none. */
  public Appearance topped(@Nullable Topmark carried) {
    return new Appearance(body, pattern, colours, symbol, board, structure, carried, light);
  }

  /** The same mark with another light, or unlit. */
  public Appearance lit(@Nullable LightCharacter shown) {
    return new Appearance(body, pattern, colours, symbol, board, structure, topmark, shown);
  }
}
