package withy.core.hydrography;

import java.util.Optional;
import withy.core.Chance;
import withy.core.mark.Practice;
import withy.core.waterway.Fairway;
import withy.core.waterway.Keel;
import withy.core.waterway.Waterway;

/** Draws stretches of water from chance: the same chance draws the same water on any machine. */
public final class WaterGenerator {
  /** After so many waters of which none could be used, something else is wrong. */
  private static final int DRAWS = 20;

  private static final int FEWEST_MARKS = 3;
  private static final int FEWEST_OF_A_BRANCH = 2;

  private WaterGenerator() {}

  /**
   * A water of the kind of a blueprint, marked as a practice marks it, in which a keel grounds
   * wherever it leaves a lateral mark on the wrong side. A water whose fairway or marks do not come
   * out is drawn again from the same chance.
   *
   * @throws IllegalStateException if none comes out at all
   */
  public static Waterway water(Practice practice, Blueprint blueprint, Keel keel, Chance chance) {
    for (int draw = 0; draw < DRAWS; draw++) {
      Bed bed = Bed.drawn(blueprint, keel, chance);
      Optional<Waterway> water = marked(practice, blueprint, keel, bed);
      if (water.isPresent()) {
        return water.get();
      }
    }
    throw new IllegalStateException("no " + blueprint.id() + " comes out for " + practice.id());
  }

  /** A bed with the marks of a practice; empty if it is no water to be shown. */
  static Optional<Waterway> marked(Practice practice, Blueprint blueprint, Keel keel, Bed bed) {
    Chance chance = Chance.of(bed.seed(), 0);
    Waterway water = bed.bare().with(Marking.of(practice, bed.bare(), bed.heads(), keel, chance));
    return Optional.of(water)
        .filter(any -> blueprint.isLed() != any.leadingLines().isEmpty())
        .filter(any -> any.fairways().stream().allMatch(each -> isWhole(any, each, keel)))
        .filter(any -> any.fairway("secondary").isEmpty() || hasJunction(any));
  }

  /** Whether a fairway is deep enough all along and its marks are enough to go by. */
  private static boolean isWhole(Waterway water, Fairway fairway, Keel keel) {
    boolean branch = !fairway.equals(water.fairways().get(0));
    long marks =
        water.marks().stream()
            .filter(each -> fairway.id().equals(each.serves()) && each.label() != null)
            .count();
    return marks >= (branch ? FEWEST_OF_A_BRANCH : FEWEST_MARKS)
        && keel.isSafe(water.sail(fairway.line(), keel).leastDepth());
  }

  private static boolean hasJunction(Waterway water) {
    return water.marks().stream().anyMatch(each -> each.kind().isPreferredChannel());
  }
}
