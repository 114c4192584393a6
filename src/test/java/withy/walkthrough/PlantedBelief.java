package withy.walkthrough;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.item.Form;
import withy.core.item.Item;
import withy.core.item.Passage;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;
import withy.core.scenario.View;

/**
 * What a learner of a story believes of lateral marks; everything else they all know. An answer
 * comes from the situation and the rules alone, never from what an option says about itself.
 */
public enum PlantedBelief {
  /** Knows the rules. */
  KNOWS(null) {
    @Override
    Optional<Side> side(Scenario scenario) {
      return byRule(scenario, scenario.situation().travel());
    }
  },
  /**
   * Takes the colours of the other region. A silhouette shows no colour, and its shape tells the
   * side in both regions.
   */
  SWAPS_THE_REGION("region-swapped") {
    @Override
    Optional<Side> side(Scenario scenario) {
      Travel travel = scenario.situation().travel();
      return scenario.situation().view() == View.DISTANT
          ? byRule(scenario, travel)
          : SideRules.byColour(
              scenario.practice().region().other(),
              scenario.mark().appearance().colours().get(0),
              travel);
    }
  },
  /** Leaves every mark on the side on which it is left when entering. */
  FORGETS_THE_DIRECTION("direction-ignored") {
    @Override
    Optional<Side> side(Scenario scenario) {
      return byRule(scenario, Travel.WITH);
    }
  };

  private final @Nullable String misconception;

  PlantedBelief(@Nullable String misconception) {
    this.misconception = misconception;
  }

  /** What a review calls the belief; null for one who knows. */
  public @Nullable String misconception() {
    return misconception;
  }

  abstract Optional<Side> side(Scenario scenario);

  /** The value of the option that somebody with this belief takes. */
  public String answer(Item item) {
    if (item.answer() instanceof Passage passage) {
      return past(passage, item.scenario());
    }
    boolean asked = item.form() == Form.SIDE && item.scenario().mark().kind().isLateral();
    return asked ? side(item.scenario()).orElseThrow().id() : item.key();
  }

  /** Mark after mark, each as if it were the only one. */
  private String past(Passage passage, Scenario scenario) {
    List<String> sides = new ArrayList<>();
    for (Passage.Leg leg : passage.legs()) {
      SightedMark mark = scenario.marks().get(leg.mark());
      Scenario alone = new Scenario(scenario.practice(), scenario.situation(), List.of(mark));
      boolean hasSides = mark.kind().isLateral() && !mark.kind().isPreferredChannel();
      sides.add(hasSides ? side(alone).orElseThrow().id() : leg.sides().key());
    }
    return String.join("/", sides);
  }

  private static Optional<Side> byRule(Scenario scenario, Travel travel) {
    return SideRules.side(scenario.practice(), scenario.mark().kind(), travel, null);
  }
}
