package withy.core.mark;

import java.util.List;

/**
 * What a mark carries above its body.
 *
 * @param colours from the top down; at least one
 */
public record Topmark(TopmarkShape shape, List<Colour> colours) {
  public Topmark {
    colours = List.copyOf(colours);
    if (colours.isEmpty()) {
      throw new IllegalArgumentException("a topmark has a colour");
    }
  }

  /** A topmark of one colour. */
  public static Topmark of(TopmarkShape shape, Colour colour) {
    return new Topmark(shape, List.of(colour));
  }
}
