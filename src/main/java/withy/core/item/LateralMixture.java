package withy.core.item;

import java.util.List;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/**
 * How items about the side of a lateral mark are mixed, so that their answers tell someone who
 * swaps the regions from someone who forgets that outbound the sides swap.
 *
<<<<<<< HEAD
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

  static Scenario drawn(Task task) {
    return switch (ROW.get(Math.floorMod(task.index(), ROW.size()))) {
      case INBOUND -> SideWriter.lateral(task, Travel.WITH, View.NEAR);
      case OUTBOUND_BY_COLOUR -> SideWriter.lateral(task, Travel.AGAINST, View.NEAR);
      case OUTBOUND_BY_SHAPE -> SideWriter.lateral(task, Travel.AGAINST, View.DISTANT);
    };
=======
 * <p>Outbound with the colour in sight both beliefs lead to the same wrong side, so that such an
 * item tells nothing of which it is, and its option names the other one every second time. Six of
 * seven items are therefore such that one belief alone goes wrong: inbound, only swapped regions
 * do; outbound by shape, which has its side in both regions, only the forgotten direction does.
 *
 * <p>They take turns in place of being drawn each by itself, since what is believed of a learner
 * fades with every answer that says nothing of the belief. Of those who hold to one of the beliefs
 * twelve items in turn name it in 19 runs of 20; drawn by themselves, or with a third of the items
 * outbound by colour, in little more than half.
 */
final class LateralMixture {
  private enum Case {
    INBOUND(Travel.WITH, View.NEAR),
    OUTBOUND_BY_SHAPE(Travel.AGAINST, View.DISTANT),
    OUTBOUND_BY_COLOUR(Travel.AGAINST, View.NEAR);

    private final Travel travel;
    private final View view;

    Case(Travel travel, View view) {
      this.travel = travel;
      this.view = view;
    }
  }

  private static final List<Case> TURNS =
      List.of(
          Case.INBOUND,
          Case.OUTBOUND_BY_SHAPE,
          Case.INBOUND,
          Case.OUTBOUND_BY_SHAPE,
          Case.INBOUND,
          Case.OUTBOUND_BY_SHAPE,
          Case.OUTBOUND_BY_COLOUR);

  private LateralMixture() {}

  /** The case whose turn it is at the index of the task; the seed says with which they begin. */
  static Scenario drawn(Task task) {
    int first = Chance.of(task.seed(), -1).below(TURNS.size());
    Case turn = TURNS.get((int) Math.floorMod((long) first + task.index(), (long) TURNS.size()));
    return SideWriter.lateral(task, turn.travel, turn.view);
>>>>>>> da9874f (Let the cases of lateral sides take turns, so that answers name the belief)
  }
}
