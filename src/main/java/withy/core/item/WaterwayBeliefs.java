package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.light.LightColour;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.MarkKind;
import withy.core.mark.Passing;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Structure;
import withy.core.mark.Symbol;
import withy.core.mark.Waters;
import withy.core.scenario.Scenario;

/**
 * On which side beliefs leave marks in waters with rules of their own, and brooms; null where a
 * belief says nothing of the mark.
 */
final class WaterwayBeliefs {
  private WaterwayBeliefs() {}

  /** The colour decides as if there were no symbol. */
  static @Nullable Side symbolIgnored(Scenario scenario) {
    return decided(scenario) ? byColour(scenario) : null;
  }

  static @Nullable Side symbolsSwapped(Scenario scenario) {
    return decided(scenario) ? opposite(right(scenario)) : null;
  }

  /** A symbol that says one side and a colour that says the other seem to leave the choice. */
  static @Nullable Side contradictionCancels(Scenario scenario) {
    boolean contradicts = decided(scenario) && byColour(scenario) != right(scenario);
    return contradicts ? Side.EITHER_SIDE : null;
  }

  /** As a square, which has straight edges as well. */
  static @Nullable Side bandTellsSide(Scenario scenario) {
    return banded(scenario)
        ? Passing.LEAVE_TO_PORT.side(scenario.situation().travel(), null).orElse(null)
        : null;
  }

  static @Nullable Side bandCancelsSide(Scenario scenario) {
    return banded(scenario) ? Side.EITHER_SIDE : null;
  }

  static @Nullable Side flashesSwapped(Scenario scenario) {
    return onRiver(scenario) ? opposite(right(scenario)) : null;
  }

  static @Nullable Side whiteTellsNoSide(Scenario scenario) {
    return onRiver(scenario) && showsWhite(scenario) ? Side.EITHER_SIDE : null;
  }

  static @Nullable Side pairMeansDanger(Scenario scenario) {
    @Nullable LightCharacter light = scenario.mark().appearance().light();
    boolean pair = light != null && !light.group().isEmpty() && light.group().get(0) == 2;
    return onRiver(scenario) && showsWhite(scenario) && pair ? Side.KEEP_CLEAR : null;
  }

  static @Nullable Side broomSwapped(Scenario scenario) {
    return isBroom(scenario.mark().appearance()) ? opposite(right(scenario)) : null;
  }

  static @Nullable MarkKind broomsSwapped(Scenario scenario) {
    return isBroom(scenario.mark().appearance()) ? KindBeliefs.otherHand(scenario) : null;
  }

  /** Twigs up look like the cones of north, twigs down like those of south. */
  static @Nullable MarkKind broomMeansCardinal(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    if (!isBroom(seen)) {
      return null;
    }
    return seen.structure() == Structure.BROOM_UP
        ? MarkKind.NORTH_CARDINAL
        : MarkKind.SOUTH_CARDINAL;
  }

  /** Whether a stake stands there, with twigs or as a branch. */
  static boolean isStake(Appearance seen) {
    return isBroom(seen) || seen.structure() == Structure.WITHY;
  }

  static boolean isBroom(Appearance seen) {
    return seen.structure() == Structure.BROOM_UP || seen.structure() == Structure.BROOM_DOWN;
  }

  private static boolean decided(Scenario scenario) {
    @Nullable Symbol symbol = scenario.mark().appearance().symbol();
    return scenario.situation().waters() == Waters.INTRACOASTAL
        && symbol != null
        && symbol.decidesSide();
  }

  private static boolean banded(Scenario scenario) {
    return scenario.situation().waters() == Waters.INTRACOASTAL
        && scenario.mark().appearance().symbol() == Symbol.YELLOW_BAND;
  }

  private static boolean onRiver(Scenario scenario) {
    return scenario.situation().waters() == Waters.WESTERN_RIVERS;
  }

  static boolean showsWhite(Scenario scenario) {
    @Nullable LightCharacter light = scenario.mark().appearance().light();
    return light != null && light.colours().contains(LightColour.WHITE);
  }

  private static @Nullable Side byColour(Scenario scenario) {
    Colour colour = scenario.mark().appearance().colours().get(0);
    return SideRules.byColour(scenario.practice().region(), colour, scenario.situation().travel())
        .orElse(null);
  }

  private static @Nullable Side right(Scenario scenario) {
    return SideBeliefs.side(scenario, scenario.situation().travel());
  }

  private static @Nullable Side opposite(@Nullable Side side) {
    return side == null ? null : side.opposite();
  }
}
