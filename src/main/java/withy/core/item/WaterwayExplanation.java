package withy.core.item;

import java.util.Objects;
import withy.core.mark.Appearance;
import withy.core.mark.MarkRule;
import withy.core.mark.Side;
import withy.core.mark.Symbol;
import withy.core.mark.Travel;
import withy.core.mark.Waters;
import withy.core.scenario.Scenario;

/** The rule that decides where waters have rules of their own, and of brooms. */
final class WaterwayExplanation {
  private WaterwayExplanation() {}

  static Message of(Scenario scenario, Side key) {
    Appearance seen = scenario.mark().appearance();
    Travel travel = scenario.situation().travel();
    Side inbound = travel == Travel.WITH ? key : key.opposite();
    if (WaterwayBeliefs.isBroom(seen)) {
      return rule(MarkRule.BROOM_TELLS_THE_HAND, travel);
    }
    if (scenario.situation().waters() == Waters.WESTERN_RIVERS) {
      return rule(MarkRule.RIVER_LIGHT_RHYTHM, travel, seen.colours().get(0), Words.left(inbound));
    }
    return seen.symbol() == Symbol.YELLOW_BAND
        ? rule(
            MarkRule.WATERWAY_BAND_TELLS_NO_SIDE,
            travel,
            seen.colours().get(0),
            Words.left(inbound))
        : rule(
            MarkRule.WATERWAY_SYMBOL_DECIDES,
            travel,
            Objects.requireNonNull(seen.symbol()),
            Words.left(inbound));
  }

  private static Message rule(MarkRule rule, Travel travel, Object... facts) {
    return Message.of(rule.messageKey() + "." + travel.id(), facts);
  }
}
