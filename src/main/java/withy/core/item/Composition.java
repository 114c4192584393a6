package withy.core.item;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.scenario.TimeOfDay;

/**
 * What a drill draws its items from.
 *
 * @param concepts to be measured; empty for all
 * @param forms to be used; empty for all
 * @param time day or night only; null for both
 * @param length items to answer, 1 to 200
 * @param water in which every item lies; null where waters are generated and items may do without
 * @param practice under which items are drawn; null for that of the class
 * @param difficulty of every item; null for any
 */
public record Composition(
    List<Concept> concepts,
    List<Form> forms,
    @Nullable TimeOfDay time,
    int length,
    @Nullable SurveyedWater water,
    @Nullable Practice practice,
    @Nullable Difficulty difficulty) {
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

  /** A composition under the practice of the class, of any difficulty. */
  public Composition(
      List<Concept> concepts,
      List<Form> forms,
      @Nullable TimeOfDay time,
      int length,
      @Nullable SurveyedWater water) {
    this(concepts, forms, time, length, water, null, null);
  }

  /** Such a composition in generated waters. */
  public Composition(
      List<Concept> concepts, List<Form> forms, @Nullable TimeOfDay time, int length) {
    this(concepts, forms, time, length, null);
  }

  /** The same in a water of its own, or in generated ones. */
  public Composition in(@Nullable SurveyedWater other) {
    return new Composition(concepts, forms, time, length, other, practice, difficulty);
  }

  /** The same with another number of items. */
  public Composition ofLength(int items) {
    return new Composition(concepts, forms, time, items, water, practice, difficulty);
  }

  /** The same about one concept alone. */
  public Composition about(Concept concept) {
    return new Composition(List.of(concept), forms, time, length, water, practice, difficulty);
  }

  /** The same by these forms alone. */
  public Composition by(List<Form> others) {
    return new Composition(concepts, others, time, length, water, practice, difficulty);
  }

  /** The same under a practice of its own, or that of the class. */
  public Composition under(@Nullable Practice other) {
    return new Composition(concepts, forms, time, length, water, other, difficulty);
  }

  /** The same with items of one difficulty alone, or of any. */
  public Composition graded(@Nullable Difficulty other) {
    return new Composition(concepts, forms, time, length, water, practice, other);
  }

  /** The practice under which items are drawn for a class. */
  public Practice practiceFor(Practice ofClass) {
    return practice == null ? ofClass : practice;
  }
}
