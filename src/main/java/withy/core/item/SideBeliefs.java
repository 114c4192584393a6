package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.CardinalRules;
import withy.core.mark.Colour;
import withy.core.mark.MarkKind;
import withy.core.mark.Passing;
import withy.core.mark.Practice;
import withy.core.mark.Quadrant;
import withy.core.mark.Side;
import withy.core.mark.SideRules;
import withy.core.mark.Travel;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/**
 * On which side beliefs leave the mark of a scenario; null where a belief says nothing of it. The
 * rules themselves are asked, with the wrong premise put in.
 */
final class SideBeliefs {
  private SideBeliefs() {}

  static @Nullable Side otherRegion(Scenario scenario) {
    boolean seen = bearsHand(scenario) && view(scenario) != View.DISTANT;
    boolean white = view(scenario) == View.LIGHT && WaterwayBeliefs.showsWhite(scenario);
    return seen && !white
        ? SideRules.byColour(
                scenario.practice().region().other(), colour(scenario), travel(scenario))
            .orElse(null)
        : null;
  }

  static @Nullable Side withBuoyage(Scenario scenario) {
    return bearsHand(scenario) ? side(scenario, Travel.WITH) : null;
  }

  static @Nullable Side shapeSwapped(Scenario scenario) {
    boolean silhouette = scenario.situation().view() == View.DISTANT && bearsHand(scenario);
    Side side = silhouette ? side(scenario, travel(scenario)) : null;
    return side == null ? null : side.opposite();
  }

  /** As when entering, since nobody asks for a direction where the mark has no side. */
  static @Nullable Side redMeansLateral(Scenario scenario) {
    boolean red = kind(scenario).equals(MarkKind.SAFE_WATER) && view(scenario) == View.NEAR;
    return red
        ? SideRules.byColour(scenario.practice().region(), Colour.RED, Travel.WITH).orElse(null)
        : null;
  }

  static @Nullable Side whiteLateral(Scenario scenario) {
    boolean white = kind(scenario).equals(MarkKind.SAFE_WATER) && view(scenario) == View.LIGHT;
    return white ? sideOf(scenario, KindBeliefs.handOfBow(scenario)) : null;
  }

  /** Canada keeps a safe-water mark to port, others leave it on either side. */
  static @Nullable Side otherPractice(Scenario scenario) {
    if (!kind(scenario).equals(MarkKind.SAFE_WATER)) {
      return null;
    }
    boolean toPort =
        scenario.practice().mark(MarkKind.SAFE_WATER).orElseThrow().passing()
            == Passing.ALWAYS_TO_PORT;
    return sideUnder(toPort ? Practice.IALA_B : Practice.CANADA, MarkKind.SAFE_WATER);
  }

  static @Nullable Side spheresSwapped(Scenario scenario) {
    return kind(scenario).equals(MarkKind.SAFE_WATER) ? Side.KEEP_CLEAR : null;
  }

  /** A special mark tells no side, so either seems right. */
  static @Nullable Side wreckTakenForSpecial(Scenario scenario) {
    return kind(scenario).equals(MarkKind.EMERGENCY_WRECK) ? Side.EITHER_SIDE : null;
  }

  static @Nullable Side stripesMeanSafeWater(Scenario scenario) {
    boolean striped =
        kind(scenario).equals(MarkKind.EMERGENCY_WRECK) && view(scenario) == View.NEAR;
    return striped ? sideUnder(scenario.practice(), MarkKind.SAFE_WATER) : null;
  }

  static @Nullable Side wreckAsCardinal(Scenario scenario) {
    @Nullable MarkKind taken =
        kind(scenario).equals(MarkKind.EMERGENCY_WRECK)
            ? KindBeliefs.yellowMeansCardinal(scenario)
            : null;
    return taken == null ? null : hand(scenario, taken.quadrant());
  }

  /** Gives a wreck the sides of a channel's mark: leaves it on the bow on which it bears. */
  static @Nullable Side everyMarkLateral(Scenario scenario) {
    boolean wreck = kind(scenario).equals(MarkKind.EMERGENCY_WRECK);
    return wreck ? sideOf(scenario, KindBeliefs.handOfBow(scenario)) : null;
  }

  static @Nullable Side handReversed(Scenario scenario) {
    Side right = kind(scenario).isCardinal() ? hand(scenario, kind(scenario).quadrant()) : null;
    return right == null ? null : right.opposite();
  }

  static @Nullable Side dangerNamed(Scenario scenario) {
    return kind(scenario).isCardinal()
        ? hand(scenario, kind(scenario).quadrant().opposite())
        : null;
  }

  /** Leaves every cardinal mark to port, whatever the heading. */
  static @Nullable Side cardinalAsLateral(Scenario scenario) {
    return kind(scenario).isCardinal() ? Side.LEAVE_TO_PORT : null;
  }

  static @Nullable Side dangerAtMark(Scenario scenario) {
    return kind(scenario).isCardinal() ? Side.KEEP_CLEAR : null;
  }

  private static @Nullable Side hand(Scenario scenario, Quadrant pass) {
    Bearing heading = scenario.situation().heading();
    return CardinalRules.hand(pass, heading).orElse(null);
  }

  /** By the rules, travelling so. */
  static @Nullable Side side(Scenario scenario, Travel travel) {
    return SideRules.side(
            scenario.practice(),
            kind(scenario),
            scenario.mark().appearance(),
            scenario.situation().waters(),
            travel,
            scenario.situation().intent())
        .orElse(null);
  }

  private static @Nullable Side sideUnder(Practice practice, MarkKind kind) {
    return SideRules.side(practice, kind, Travel.NONE, null).orElse(null);
  }

  private static @Nullable Side sideOf(Scenario scenario, MarkKind lateral) {
    return SideRules.side(scenario.practice(), lateral, Travel.WITH, null).orElse(null);
  }

  /** The colour of the body, which a lateral light has as well. */
  private static Colour colour(Scenario scenario) {
    return scenario.mark().appearance().colours().get(0);
  }

  private static boolean bearsHand(Scenario scenario) {
    return kind(scenario).isLateral();
  }

  private static MarkKind kind(Scenario scenario) {
    return scenario.mark().kind();
  }

  private static Travel travel(Scenario scenario) {
    return scenario.situation().travel();
  }

  private static View view(Scenario scenario) {
    return scenario.situation().view();
  }
}
