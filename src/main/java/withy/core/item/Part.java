package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;

/**
 * One of the parts that may be chosen for a feature of a mark.
 *
 * @param value without space, equals sign or slash
 * @param look a mark of which this feature is to be taken, and which may stand as the picture of
 *     the part; null where the part cannot be drawn
 */
public record Part(String value, Message text, @Nullable Appearance look) {
  /**
   * @throws IllegalArgumentException if the value is no plain word
   */
  public Part {
    if (value.isEmpty() || value.matches("(?s).*[\\s=/].*")) {
      throw new IllegalArgumentException("'" + value + "' cannot be the value of a part");
    }
  }
}
