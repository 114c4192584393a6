package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.mark.ChannelIntent;
import withy.core.mark.MarkKind;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;

/** On which side beliefs leave the preferred-channel mark of a scenario. */
final class ChannelBeliefs {
  private ChannelBeliefs() {}

  static @Nullable Side otherRegion(Scenario scenario) {
    return taken(scenario, KindBeliefs.otherRegion(scenario));
  }

  static @Nullable Side middleBand(Scenario scenario) {
    return taken(scenario, KindBeliefs.middleBand(scenario));
  }

  static @Nullable Side channelNameAsSide(Scenario scenario) {
    return taken(scenario, KindBeliefs.channelNameAsSide(scenario));
  }

  static @Nullable Side bifurcationName(Scenario scenario) {
    return taken(scenario, KindBeliefs.bifurcationName(scenario));
  }

  /** A plain lateral mark has one side, whichever channel is wanted. */
  static @Nullable Side compositeReadAsGroup(Scenario scenario) {
    return taken(scenario, KindBeliefs.compositeReadAsGroup(scenario));
  }

  static @Nullable Side bandOverlooked(Scenario scenario) {
    return taken(scenario, KindBeliefs.bandOverlooked(scenario));
  }

  static @Nullable Side withBuoyage(Scenario scenario) {
    return side(scenario, scenario.mark().kind(), Travel.WITH, scenario.situation().intent());
  }

  static @Nullable Side intentIgnored(Scenario scenario) {
    Travel travel = scenario.situation().travel();
    return side(scenario, scenario.mark().kind(), travel, ChannelIntent.PREFERRED);
  }

  static Side junctionEitherSide(Scenario scenario) {
    return Side.EITHER_SIDE;
  }

  private static @Nullable Side taken(Scenario scenario, @Nullable MarkKind kind) {
    return kind == null
        ? null
        : side(scenario, kind, scenario.situation().travel(), scenario.situation().intent());
  }

  private static @Nullable Side side(
      Scenario scenario, MarkKind kind, Travel travel, @Nullable ChannelIntent intent) {
    return SideRules.side(scenario.practice(), kind, travel, intent).orElse(null);
  }
}
