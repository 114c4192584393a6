package withy.core.mark;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * All that can be seen of a mark by day and at night.
 *
 * @param colours of the body: from the top down, or from left to right when the pattern is vertical
 * @param topmark null where none is fitted
 * @param light null where the mark is unlit
 */
public record Appearance(
    BodyShape body,
    ColourPattern pattern,
    List<Colour> colours,
    @Nullable Topmark topmark,
    @Nullable LightCharacter light) {
  /**
   * @throws IllegalArgumentException if there is no colour, or a plain body has more than one
   */
  public Appearance {
    colours = List.copyOf(colours);
    if (colours.isEmpty() || (pattern == ColourPattern.PLAIN) != (colours.size() == 1)) {
      throw new IllegalArgumentException("a " + pattern.id() + " body cannot have " + colours);
    }
  }
}
