package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import withy.core.Chance;
import withy.core.Term;
import withy.core.geometry.Position;
import withy.core.hydrography.SurveyedWater;
import withy.core.mark.Practice;
import withy.core.mark.Travel;

/** Draws items from a seed: the same arguments give the same item on any machine. */
public final class ItemGenerator {
  private ItemGenerator() {}

  /** Changes whenever the item drawn from some seed changes. */
  public static final int VERSION = 4;

  /**
   * The item at an index of a seed, drawn from all that a composition allows under a practice:
   * first a concept, every one as likely, so that each is met as often whatever the number of forms
   * that measure it; then one of those forms; of a difficulty, items until one is as hard.
   *
   * @param ofClass the practice, unless the composition has one of its own
   * @throws IllegalArgumentException if the composition allows nothing under the practice
   */
  public static Item item(Practice ofClass, Composition composition, long seed, int index) {
    Practice practice = composition.practiceFor(ofClass);
    Menu menu = Menu.of(practice);
    List<List<Menu.Course>> allowed = menu.allowed(composition);
    if (allowed.isEmpty()) {
      throw new IllegalArgumentException(nothing(practice, composition));
    }
    Chance chance = Chance.of(seed, index);
    Menu.Course course = chance.pick(chance.pick(allowed));
    return menu.item(course, composition, chance, seed, index);
  }

  /**
   * The concepts that items of this composition can measure under a practice, in syllabus order;
   * empty if it allows nothing.
   *
   * @param ofClass the practice, unless the composition has one of its own
   */
  public static List<Concept> measurable(Practice ofClass, Composition composition) {
    List<Concept> measurable = new ArrayList<>();
    Menu menu = Menu.of(composition.practiceFor(ofClass));
    for (List<Menu.Course> courses : menu.allowed(composition)) {
      measurable.add(courses.get(0).concept());
    }
    return List.copyOf(measurable);
  }

  /**
   * Where the lateral marks of a water stand whose side can be asked about under a practice; none
   * where the boat has no direction to sail.
   *
   * @param travel of the boat that comes up to them
   */
  public static List<Position> askedSides(SurveyedWater water, Practice practice, Travel travel) {
    return WaterSides.asked(water, practice, travel);
  }

  private static String nothing(Practice practice, Composition composition) {
    StringBuilder words = new StringBuilder("practice ").append(practice.id()).append(" has no");
    if (composition.difficulty() != null) {
      words.append(' ').append(composition.difficulty().id());
    }
    listed(words, " ", composition.forms());
    words.append(" item");
    listed(words, " about ", composition.concepts());
    if (composition.time() != null) {
      words.append(" by ").append(composition.time().id());
    }
    if (composition.water() != null) {
      words.append(" in the water ").append(composition.water().id());
    }
    return words.toString();
  }

  private static void listed(StringBuilder words, String before, List<? extends Term> terms) {
    String joint = before;
    for (Term each : terms) {
      words.append(joint).append(each.id());
      joint = " or ";
    }
  }
}
