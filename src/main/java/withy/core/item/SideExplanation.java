package withy.core.item;

import withy.core.mark.Appearance;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.core.mark.Side;
import withy.core.mark.Topmark;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.Situation;
import withy.core.scenario.View;

/** The rule that decides on which side to leave a mark, with the facts of the case. */
final class SideExplanation {
  private SideExplanation() {}

  static Message of(Scenario scenario, Side key) {
    MarkKind kind = scenario.mark().kind();
    if (scenario.situation().waters() != null
        || WaterwayBeliefs.isBroom(scenario.mark().appearance())) {
      return WaterwayExplanation.of(scenario, key);
    }
    if (kind.isLateral()) {
      return scenario.situation().view() == View.DISTANT
          ? shape(scenario, key)
          : colour(scenario, key);
    }
    if (kind.isCardinal()) {
      return cardinal(scenario, key);
    }
    return kind.equals(MarkKind.SAFE_WATER)
        ? safeWater(scenario.practice())
        : Message.of(MarkRule.WRECK_KEEP_CLEAR.messageKey());
  }

  private static Message colour(Scenario scenario, Side key) {
    MarkRule rule =
        with(scenario) ? MarkRule.LATERAL_SIDE_WITH_BUOYAGE : MarkRule.SIDES_SWAP_AGAINST_BUOYAGE;
    Side inbound = with(scenario) ? key : key.opposite();
    return Message.of(
        rule.messageKey(),
        scenario.practice().region(),
        scenario.mark().appearance().colours().get(0),
        Words.left(inbound));
  }

  private static Message shape(Scenario scenario, Side key) {
    Appearance seen = scenario.mark().appearance();
    Topmark topmark = seen.topmark();
    Side inbound = with(scenario) ? key : key.opposite();
    return Message.of(
        MarkRule.SHAPE_KEEPS_ITS_SIDE.messageKey() + "." + scenario.situation().travel().id(),
        topmark == null ? seen.body() : topmark.shape(),
        Words.left(inbound));
  }

  private static Message safeWater(Practice practice) {
    return Message.of(
        practice.mark(MarkKind.SAFE_WATER).orElseThrow().passing() == Passing.ALWAYS_TO_PORT
            ? MarkRule.SAFE_WATER_KEPT_TO_PORT.messageKey()
            : MarkRule.SAFE_WATER_EITHER_SIDE.messageKey());
  }

  private static Message cardinal(Scenario scenario, Side key) {
    MarkKind kind = scenario.mark().kind();
    Situation situation = scenario.situation();
    return Message.of(
        MarkRule.CARDINAL_HAND_FROM_HEADING.messageKey(),
        Words.mark(scenario.practice(), kind),
        kind.quadrant(),
        situation.heading(),
        Words.left(key));
  }

  private static boolean with(Scenario scenario) {
    return scenario.situation().travel() == Travel.WITH;
  }
}
