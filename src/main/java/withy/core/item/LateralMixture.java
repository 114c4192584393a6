package withy.core.item;

import java.util.List;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/**
 * How items about the side of a lateral mark are mixed, so that their answers tell someone who
 * swaps the regions from someone who forgets that outbound the sides swap.
 *
 * <p>Outbound with the colour in sight both beliefs lead to the same wrong side, which tells them
 * apart only by those who answer right inbound. So items of two other kinds come first, in which
 * one belief alone goes wrong: inbound, where only swapped regions do, and outbound by shape, which
 * has its side in both regions, so that only the forgotten direction does. They follow one another
 * by rule, not by chance: in a short drill chance would give one learner what another lacks.
 */
final class LateralMixture {
  private static final List<Kind> ROW =
      List.of(
          Kind.INBOUND,
          Kind.OUTBOUND_BY_SHAPE,
          Kind.OUTBOUND_BY_COLOUR,
          Kind.OUTBOUND_BY_COLOUR,
          Kind.INBOUND);

  private LateralMixture() {}

  private enum Kind {
    INBOUND,
    OUTBOUND_BY_COLOUR,
    OUTBOUND_BY_SHAPE
  }

  /** One in three in a stretch of water, where every answer is sailed; in a water given, all. */
  private static Scenario byColour(Task task, Travel travel) {
    return task.surveyed() != null || task.chance().oneIn(3)
        ? WaterSides.drawn(task, travel)
        : SideWriter.lateral(task, travel, View.NEAR);
  }

  static Scenario drawn(Task task) {
    return switch (ROW.get(Math.floorMod(task.index(), ROW.size()))) {
      case INBOUND -> byColour(task, Travel.WITH);
      case OUTBOUND_BY_COLOUR -> byColour(task, Travel.AGAINST);
      case OUTBOUND_BY_SHAPE ->
          task.surveyed() == null
              ? SideWriter.lateral(task, Travel.AGAINST, View.DISTANT)
              : WaterSides.fromAfar(WaterSides.drawn(task, Travel.AGAINST));
    };
  }
}
