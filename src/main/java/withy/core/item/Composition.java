package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.scenario.TimeOfDay;

/**
 * What a drill draws its items from.
 *
 * @param concepts to be measured; empty for all
 * @param forms to be used; empty for all
 * @param time day or night only; null for both
 * @param length items to answer, 1 to 200
 */
public record Composition(
    List<Concept> concepts, List<Form> forms, @Nullable TimeOfDay time, int length) {
  public static final int LONGEST = 200;

  /**
   * @throws IllegalArgumentException if the length is outside 1 to 200
   */
  public Composition {
    concepts = List.copyOf(concepts);
    forms = List.copyOf(forms);
    if (length < 1 || length > LONGEST) {
      throw new IllegalArgumentException("length " + length + " is outside 1 to " + LONGEST);
    }
  }
}
