package withy.core.item;

import withy.core.mark.MarkKind;
import withy.core.mark.MarkRule;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/** The rule by which a kind of mark is told, with the facts of the case. */
final class KindExplanation {
  private KindExplanation() {}

  static Message of(Scenario scenario) {
    MarkKind kind = scenario.mark().kind();
    MarkRule rule =
        scenario.situation().view() == View.LIGHT
            ? light(kind)
            : scenario.situation().view() == View.DISTANT ? silhouette(kind) : look(kind);
    return Message.of(
        rule.messageKey() + "." + kind.id(),
        Words.mark(scenario.practice(), kind),
        scenario.practice().region(),
        scenario.mark().appearance().colours().get(0));
  }

  private static MarkRule look(MarkKind kind) {
    return switch (kind) {
      case PORT_HAND, STARBOARD_HAND -> MarkRule.LATERAL_COLOUR_BY_REGION;
      case PREFERRED_CHANNEL_TO_STARBOARD, PREFERRED_CHANNEL_TO_PORT ->
          MarkRule.PREFERRED_CHANNEL_BODY_COLOUR;
      case NORTH_CARDINAL, EAST_CARDINAL, SOUTH_CARDINAL, WEST_CARDINAL ->
          MarkRule.CARDINAL_COLOURS;
      case ISOLATED_DANGER -> MarkRule.ISOLATED_DANGER_LOOK;
      case SAFE_WATER -> MarkRule.SAFE_WATER_LOOK;
      case SPECIAL -> MarkRule.SPECIAL_LOOK;
      case EMERGENCY_WRECK -> MarkRule.WRECK_LOOK;
    };
  }

  private static MarkRule silhouette(MarkKind kind) {
    return kind.isCardinal() ? MarkRule.CARDINAL_TOPMARKS : look(kind);
  }

  private static MarkRule light(MarkKind kind) {
    return switch (kind) {
      case PORT_HAND, STARBOARD_HAND -> MarkRule.LATERAL_LIGHT;
      case PREFERRED_CHANNEL_TO_STARBOARD, PREFERRED_CHANNEL_TO_PORT ->
          MarkRule.PREFERRED_CHANNEL_LIGHT;
      case NORTH_CARDINAL, EAST_CARDINAL, SOUTH_CARDINAL, WEST_CARDINAL -> MarkRule.CARDINAL_LIGHTS;
      case ISOLATED_DANGER -> MarkRule.ISOLATED_DANGER_LIGHT;
      case SAFE_WATER -> MarkRule.SAFE_WATER_LIGHT;
      case SPECIAL -> MarkRule.SPECIAL_LIGHT;
      case EMERGENCY_WRECK -> MarkRule.WRECK_LIGHT;
    };
  }
}
