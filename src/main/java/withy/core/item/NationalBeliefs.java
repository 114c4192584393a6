package withy.core.item;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.BoardShape;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkDescription;
import withy.core.mark.MarkGroup;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Region;
import withy.core.mark.Symbol;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/**
 * For which kind of mark beliefs take a mark of national practice that is seen near by; null where
 * what the belief goes by is not seen. They go by symbol, colours and board, so that a mark that a
 * practice gains is taken for others without a line here.
 */
final class NationalBeliefs {
  private static final Set<MarkGroup> GROUPS =
      EnumSet.of(
          MarkGroup.REGULATORY,
          MarkGroup.LOCAL_USE,
          MarkGroup.NOTICE_BOARD,
          MarkGroup.WESTERN_RIVERS);

  private static final Map<Symbol, Symbol> SWAPPED = swapped();

  private NationalBeliefs() {}

  private static Map<Symbol, Symbol> swapped() {
    Map<Symbol, Symbol> swapped = new EnumMap<>(Symbol.class);
    swapped.put(Symbol.DIAMOND, Symbol.CIRCLE);
    swapped.put(Symbol.DIAMOND_CROSS, Symbol.CIRCLE);
    swapped.put(Symbol.CIRCLE, Symbol.DIAMOND);
    swapped.put(Symbol.SQUARE, Symbol.CIRCLE);
    return Collections.unmodifiableMap(swapped);
  }

  /** Whether the mark belongs to no class of the system and is seen near by. */
  static boolean isNational(Scenario scenario) {
    return scenario.situation().view() == View.NEAR
        && MarkingRules.has(scenario.practice(), scenario.mark().kind())
        && GROUPS.contains(scenario.described().group());
  }

  static @Nullable MarkKind symbolsSwapped(Scenario scenario) {
    @Nullable Symbol sign = sign(scenario);
    return sign == null ? null : bearing(scenario.practice(), SWAPPED.get(sign));
  }

  static @Nullable MarkKind crossUnnoticed(Scenario scenario) {
    @Nullable Symbol sign = sign(scenario);
    if (sign == Symbol.DIAMOND) {
      return bearing(scenario.practice(), Symbol.DIAMOND_CROSS);
    }
    return sign == Symbol.DIAMOND_CROSS ? bearing(scenario.practice(), Symbol.DIAMOND) : null;
  }

  static @Nullable MarkKind orangeMeansDanger(Scenario scenario) {
    return showsOrange(scenario) ? bearing(scenario.practice(), Symbol.DIAMOND) : null;
  }

  static @Nullable MarkKind onlyInformation(Scenario scenario) {
    boolean both = showsOrange(scenario) && shows(scenario, Colour.WHITE);
    return both ? bearing(scenario.practice(), Symbol.SQUARE) : null;
  }

  /** The kind of the same colours that bears none; special marks are too wide a class. */
  static @Nullable MarkKind symbolOverlooked(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    if (!isNational(scenario) || seen.symbol() == null) {
      return null;
    }
    for (MarkDescription each : scenario.practice().marks()) {
      boolean bare = each.look().symbol() == null && each.look().colours().equals(seen.colours());
      if (bare && !each.look().isFixed() && GROUPS.contains(each.group())) {
        return each.kind();
      }
    }
    return null;
  }

  static @Nullable MarkKind anchorMeansMooring(Scenario scenario) {
    boolean anchor = scenario.mark().appearance().symbol() == Symbol.ANCHOR;
    return anchor && isNational(scenario) ? MarkKind.MOORING : null;
  }

  /** Where mooring buoys are orange on top elsewhere, whatever is orange on top, and so on. */
  static @Nullable MarkKind mooringOfAnotherCountry(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    if (!isNational(scenario) || seen.body() == BodyShape.DAYBOARD) {
      return null;
    }
    @Nullable Colour own = mooringTop(scenario.practice());
    for (Practice each : Practice.values()) {
      @Nullable Colour there = mooringTop(each);
      if (own != null && there != null && there != own && there == top(seen)) {
        return MarkKind.MOORING;
      }
    }
    return null;
  }

  static @Nullable MarkKind whiteMeansSafeWater(Scenario scenario) {
    boolean white = isNational(scenario) && shows(scenario, Colour.WHITE);
    return white ? MarkKind.SAFE_WATER : null;
  }

  static @Nullable MarkKind blueMeansWreck(Scenario scenario) {
    boolean blue = isNational(scenario) && shows(scenario, Colour.BLUE);
    return blue ? MarkKind.EMERGENCY_WRECK : null;
  }

  static @Nullable MarkKind blackMeansDanger(Scenario scenario) {
    boolean black = isNational(scenario) && shows(scenario, Colour.BLACK);
    return black ? MarkKind.ISOLATED_DANGER : null;
  }

  static @Nullable MarkKind boardColourMeansLateral(Scenario scenario) {
    boolean board = isNational(scenario) && scenario.mark().appearance().board() != null;
    Region region = scenario.practice().region();
    if (board && shows(scenario, region.portHand())) {
      return MarkKind.PORT_HAND;
    }
    return board && shows(scenario, region.starboardHand()) ? MarkKind.STARBOARD_HAND : null;
  }

  /** The other kind of the practice whose board is divided into squares or sectors. */
  static @Nullable MarkKind checksSwapped(Scenario scenario) {
    boolean checked = scenario.mark().appearance().pattern() == ColourPattern.SQUARED;
    if (!checked || !isNational(scenario)) {
      return null;
    }
    for (MarkDescription each : scenario.practice().marks()) {
      boolean other = !each.kind().equals(scenario.mark().kind());
      if (other && each.look().pattern() == ColourPattern.SQUARED) {
        return each.kind();
      }
    }
    return null;
  }

  /** A warning is what a mark of no channel seems to give. */
  static @Nullable MarkKind unfamiliarMeansDanger(Scenario scenario) {
    if (!isNational(scenario) || showsOrange(scenario)) {
      return null;
    }
    boolean warned = MarkingRules.has(scenario.practice(), MarkKind.HAZARD);
    return warned ? MarkKind.HAZARD : MarkKind.ISOLATED_DANGER;
  }

  /** The orange symbol, or the one whose shape an orange-edged board has. */
  private static @Nullable Symbol sign(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    if (!isNational(scenario)) {
      return null;
    }
    if (seen.board() != null && seen.board().border() == Colour.ORANGE) {
      return seen.board().shape() == BoardShape.DIAMOND ? Symbol.DIAMOND : Symbol.SQUARE;
    }
    return seen.symbol() != null && seen.symbol().isOrange() ? seen.symbol() : null;
  }

  private static boolean showsOrange(Scenario scenario) {
    return sign(scenario) != null || (isNational(scenario) && shows(scenario, Colour.ORANGE));
  }

  private static boolean shows(Scenario scenario, Colour colour) {
    return scenario.mark().appearance().colours().contains(colour);
  }

  /** The colour uppermost: orange symbols go with an orange band near the top. */
  private static Colour top(Appearance seen) {
    boolean banded = seen.symbol() != null && seen.symbol().isOrange();
    return banded ? Colour.ORANGE : seen.colours().get(0);
  }

  private static @Nullable Colour mooringTop(Practice practice) {
    return practice.mark(MarkKind.MOORING).map(each -> each.look().colours().get(0)).orElse(null);
  }

  private static @Nullable MarkKind bearing(Practice practice, @Nullable Symbol symbol) {
    for (MarkDescription each : practice.marks()) {
      if (symbol != null && each.look().symbol() == symbol) {
        return each.kind();
      }
    }
    return null;
  }
}
