package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BodyShape;
import withy.core.mark.Demand;
import withy.core.mark.Symbol;
import withy.core.scenario.Scenario;
import withy.core.scenario.SightedMark;

/** What beliefs take the mark of a scenario to ask; null where a belief says nothing of it. */
final class DemandBeliefs {
  private DemandBeliefs() {}

  static @Nullable Demand orderIsAdvice(Scenario scenario) {
    Demand right = Demands.of(scenario);
    boolean order = right.equals(Demand.STAY_OUT) || right.equals(Demand.OBEY_RESTRICTION);
    return order ? Demand.GO_AS_YOU_JUDGE : null;
  }

  static @Nullable Demand anyBuoyTakesALine(Scenario scenario) {
    BodyShape body = scenario.mark().appearance().body();
    boolean afloat = body != BodyShape.DAYBOARD && body != BodyShape.BEACON;
    return afloat ? Demand.MAY_MOOR : null;
  }

  static @Nullable Demand mooringIsForbidden(Scenario scenario) {
    return Demands.of(scenario).equals(Demand.MAY_MOOR) ? Demand.DO_NOT_MOOR : null;
  }

  static @Nullable Demand anchorMeansForbidden(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    return seen.symbol() == Symbol.ANCHOR ? Demand.DO_NOT_ANCHOR : null;
  }

  static @Nullable Demand privateMeansKeepOut(Scenario scenario) {
    return isPrivate(scenario) ? Demand.STAY_OUT : null;
  }

  static @Nullable Demand privateNeedsNoHeed(Scenario scenario) {
    return isPrivate(scenario) ? Demand.GO_AS_YOU_JUDGE : null;
  }

  private static boolean isPrivate(Scenario scenario) {
    return SightedMark.PRIVATE.equals(scenario.mark().label());
  }

  static @Nullable Demand boardsOnlyShowThePlace(Scenario scenario) {
    return scenario.mark().appearance().board() == null ? null : Demand.FIND_POSITION;
  }
}
