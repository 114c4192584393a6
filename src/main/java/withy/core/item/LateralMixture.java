package withy.core.item;

import withy.core.mark.Travel;
import withy.core.scenario.Chance;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/**
 * How items about the side of a lateral mark are mixed, so that their answers tell someone who
 * swaps the regions from someone who forgets that outbound the sides swap.
 *
 * <p>Outbound with the colour in sight both beliefs lead to the same wrong side, which tells them
 * apart only by those who answer right inbound. So most items are of two kinds in which one belief
 * alone goes wrong: inbound, where only swapped regions do, and outbound by shape, which has its
 * side in both regions, so that only the forgotten direction does.
 */
final class LateralMixture {
  private static final int INBOUND = 40;
  private static final int OUTBOUND_BY_COLOUR = 35;

  private LateralMixture() {}

  static Scenario drawn(Task task, Chance chance) {
    int draw = chance.below(100);
    if (draw < INBOUND) {
      return SideWriter.lateral(task, Travel.WITH, View.NEAR);
    }
    boolean colour = draw < INBOUND + OUTBOUND_BY_COLOUR;
    return SideWriter.lateral(task, Travel.AGAINST, colour ? View.NEAR : View.DISTANT);
  }
}
