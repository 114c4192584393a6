package withy.core.item;

import java.util.ArrayList;
import java.util.List;
import withy.core.mark.Demand;
import withy.core.mark.MarkKind;
import withy.core.mark.Recognition;
import withy.core.scenario.Scenario;

/** What marks ask of the mariner, and which of it is too alike to be told apart. */
final class Demands {
  /** To answer one for the other would be no error. */
  private static final List<List<Demand>> ALIKE =
      List.of(
          List.of(Demand.STAY_OUT, Demand.LEAVE_TO_SWIMMERS),
          List.of(
              Demand.STAND_OFF,
              Demand.BEWARE_OF_DANGER,
              Demand.KEEP_CLEAR_OF_WRECK,
              Demand.STAY_OFFSHORE),
          List.of(
              Demand.READ_CHART,
              Demand.TAKE_CARE,
              Demand.BEWARE_OF_DANGER,
              Demand.ANCHOR_WITHIN,
              Demand.LEAVE_ALONE),
          List.of(Demand.MIND_DIVERS, Demand.BEWARE_OF_DANGER, Demand.TAKE_CARE),
          List.of(Demand.READ_NOTICE, Demand.FIND_POSITION, Demand.READ_CHART));

  private Demands() {}

  /** What the mark of a scenario asks. */
  static Demand of(Scenario scenario) {
    return scenario.described().demand();
  }

  /** What else could be answered with right, as words. */
  static List<String> alsoRight(Scenario scenario) {
    List<String> right = new ArrayList<>();
    Demand asked = of(scenario);
    for (List<Demand> each : ALIKE) {
      if (each.contains(asked)) {
        each.forEach(alike -> right.add(alike.id()));
      }
    }
    if (!scenario.described().chartTells()) {
      for (MarkKind each :
          Recognition.possibleByDay(scenario.practice(), scenario.mark().appearance())) {
        scenario.practice().mark(each).ifPresent(mark -> right.add(mark.demand().id()));
      }
    }
    return right;
  }
}
