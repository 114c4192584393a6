package withy.core.item;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.Practice;
import withy.core.mark.Region;
import withy.core.scenario.Scenario;
import withy.core.scenario.View;

/**
 * For which kind of mark beliefs take the mark of a scenario; null where a belief says nothing of
 * it, since it is of another kind or what the belief goes by is not seen.
 */
final class KindBeliefs {
  private static final Map<MarkKind, MarkKind> OTHER_HAND =
      swapped(
          MarkKind.PORT_HAND,
          MarkKind.STARBOARD_HAND,
          MarkKind.PREFERRED_CHANNEL_TO_STARBOARD,
          MarkKind.PREFERRED_CHANNEL_TO_PORT);

  /** The mark of the same colour on top, with a band instead of without and the reverse. */
  private static final Map<MarkKind, MarkKind> BANDED_OR_PLAIN =
      swapped(
          MarkKind.PORT_HAND,
          MarkKind.PREFERRED_CHANNEL_TO_STARBOARD,
          MarkKind.STARBOARD_HAND,
          MarkKind.PREFERRED_CHANNEL_TO_PORT);

  private static final Map<MarkKind, MarkKind> NORTH_SOUTH =
      swapped(MarkKind.NORTH_CARDINAL, MarkKind.SOUTH_CARDINAL);

  private static final Map<MarkKind, MarkKind> EAST_WEST =
      swapped(MarkKind.EAST_CARDINAL, MarkKind.WEST_CARDINAL);

  private static final Map<MarkKind, MarkKind> UPPER_HALF =
      swapped(
          MarkKind.NORTH_CARDINAL,
          MarkKind.EAST_CARDINAL,
          MarkKind.SOUTH_CARDINAL,
          MarkKind.WEST_CARDINAL);

  private static final Map<MarkKind, MarkKind> QUARTER_EARLIER =
      taken(
          MarkKind.NORTH_CARDINAL,
          MarkKind.WEST_CARDINAL,
          MarkKind.EAST_CARDINAL,
          MarkKind.NORTH_CARDINAL,
          MarkKind.SOUTH_CARDINAL,
          MarkKind.EAST_CARDINAL,
          MarkKind.WEST_CARDINAL,
          MarkKind.SOUTH_CARDINAL);

  private static final Map<MarkKind, MarkKind> RHYTHM_IGNORED =
      taken(
          MarkKind.ISOLATED_DANGER,
          MarkKind.EAST_CARDINAL,
          MarkKind.SAFE_WATER,
          MarkKind.NORTH_CARDINAL);

  private static final Map<MarkKind, MarkKind> SPHERES =
      swapped(MarkKind.ISOLATED_DANGER, MarkKind.SAFE_WATER);

  private static final Map<MarkKind, MarkKind> CROSSES =
      swapped(MarkKind.SPECIAL, MarkKind.EMERGENCY_WRECK);

  private static final List<MarkKind> SINGLE_TOPMARKS =
      List.of(MarkKind.SAFE_WATER, MarkKind.SPECIAL, MarkKind.EMERGENCY_WRECK);

  private KindBeliefs() {}

  /** Pairs of kinds of which each is taken for the other. */
  private static Map<MarkKind, MarkKind> swapped(MarkKind... pairs) {
    Map<MarkKind, MarkKind> swapped = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      swapped.put(pairs[i], pairs[i + 1]);
      swapped.put(pairs[i + 1], pairs[i]);
    }
    return Collections.unmodifiableMap(swapped);
  }

  /** Pairs of a kind and the one for which it is taken. */
  private static Map<MarkKind, MarkKind> taken(MarkKind... pairs) {
    Map<MarkKind, MarkKind> taken = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      taken.put(pairs[i], pairs[i + 1]);
    }
    return Collections.unmodifiableMap(taken);
  }

  static @Nullable MarkKind otherHand(Scenario scenario) {
    return OTHER_HAND.get(kind(scenario));
  }

  static @Nullable MarkKind otherRegion(Scenario scenario) {
    return view(scenario) == View.DISTANT ? null : OTHER_HAND.get(kind(scenario));
  }

  static @Nullable MarkKind shapeSwapped(Scenario scenario) {
    boolean lateral = view(scenario) == View.DISTANT && kind(scenario).isLateral();
    return lateral ? OTHER_HAND.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind bandOverlooked(Scenario scenario) {
    boolean seen = view(scenario) == View.NEAR;
    return seen && !WaterwayBeliefs.isStake(scenario.mark().appearance())
        ? BANDED_OR_PLAIN.get(kind(scenario))
        : null;
  }

  static @Nullable MarkKind compositeReadAsGroup(Scenario scenario) {
    boolean seen = view(scenario) == View.LIGHT && kind(scenario).isPreferredChannel();
    return seen ? BANDED_OR_PLAIN.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind middleBand(Scenario scenario) {
    boolean seen = view(scenario) == View.NEAR && kind(scenario).isPreferredChannel();
    return seen ? OTHER_HAND.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind channelNameAsSide(Scenario scenario) {
    boolean seen = view(scenario) != View.DISTANT && kind(scenario).isPreferredChannel();
    return seen ? OTHER_HAND.get(kind(scenario)) : null;
  }

  /** Only Canada names the marks at a junction after the hand on which they are left. */
  static @Nullable MarkKind bifurcationName(Scenario scenario) {
    return scenario.practice().id().equals(Practice.CANADA.id())
        ? channelNameAsSide(scenario)
        : null;
  }

  static @Nullable MarkKind bandsMeanDanger(Scenario scenario) {
    boolean seen = view(scenario) == View.NEAR && kind(scenario).isPreferredChannel();
    return seen ? MarkKind.ISOLATED_DANGER : null;
  }

  static @Nullable MarkKind northSouthColours(Scenario scenario) {
    return view(scenario) == View.NEAR ? NORTH_SOUTH.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind eastWestColours(Scenario scenario) {
    return view(scenario) == View.NEAR ? EAST_WEST.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind conesPointToDanger(Scenario scenario) {
    return topmarkSeen(scenario) ? NORTH_SOUTH.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind eastWestTopmarks(Scenario scenario) {
    return topmarkSeen(scenario) ? EAST_WEST.get(kind(scenario)) : null;
  }

  /** North and east are black on top with a cone up, south and west yellow with a cone down. */
  static @Nullable MarkKind upperHalf(Scenario scenario) {
    return view(scenario) == View.LIGHT ? null : UPPER_HALF.get(kind(scenario));
  }

  /** Reads each light as the one a quarter earlier on the clock. */
  static @Nullable MarkKind clockFace(Scenario scenario) {
    return view(scenario) == View.LIGHT ? QUARTER_EARLIER.get(kind(scenario)) : null;
  }

  /** Counts the quarters of the clock the wrong way round: three flashes west, nine east. */
  static @Nullable MarkKind clockReversed(Scenario scenario) {
    return view(scenario) == View.LIGHT ? EAST_WEST.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind longFlashCounted(Scenario scenario) {
    boolean south = kind(scenario).equals(MarkKind.SOUTH_CARDINAL) && view(scenario) == View.LIGHT;
    return south ? MarkKind.WEST_CARDINAL : null;
  }

  /** The hand on whose bow the light bears, since a white light tells none. */
  static @Nullable MarkKind whiteLateral(Scenario scenario) {
    boolean seen = view(scenario) == View.LIGHT && showsWhite(kind(scenario));
    return seen ? handOfBow(scenario) : null;
  }

  static @Nullable MarkKind rhythmIgnored(Scenario scenario) {
    if (view(scenario) != View.LIGHT) {
      return null;
    }
    MarkKind kind = kind(scenario);
    return kind.isCardinal()
        ? MarkKind.ISOLATED_DANGER
        : RHYTHM_IGNORED.getOrDefault(kind, BANDED_OR_PLAIN.get(kind));
  }

  static @Nullable MarkKind spheresSwapped(Scenario scenario) {
    return SPHERES.get(kind(scenario));
  }

  static @Nullable MarkKind redMeansLateral(Scenario scenario) {
    boolean red =
        kind(scenario).equals(MarkKind.SAFE_WATER)
            || kind(scenario).equals(MarkKind.ISOLATED_DANGER);
    return red && view(scenario) == View.NEAR ? redHand(scenario) : null;
  }

  /** Takes the stripes of a safe-water mark for the bands of a mark at a junction. */
  static @Nullable MarkKind patternIgnored(Scenario scenario) {
    boolean striped = kind(scenario).equals(MarkKind.SAFE_WATER) && view(scenario) == View.NEAR;
    return striped ? BANDED_OR_PLAIN.get(redHand(scenario)) : null;
  }

  static @Nullable MarkKind pairMeansCardinal(Scenario scenario) {
    boolean pair = kind(scenario).equals(MarkKind.ISOLATED_DANGER) && topmarkSeen(scenario);
    return pair ? MarkKind.EAST_CARDINAL : null;
  }

  static @Nullable MarkKind singleMeansLateral(Scenario scenario) {
    boolean single = view(scenario) == View.DISTANT && SINGLE_TOPMARKS.contains(kind(scenario));
    return single ? MarkKind.PORT_HAND : null;
  }

  static @Nullable MarkKind crossesSwapped(Scenario scenario) {
    return topmarkSeen(scenario) ? CROSSES.get(kind(scenario)) : null;
  }

  static @Nullable MarkKind yellowMeansCardinal(Scenario scenario) {
    boolean national =
        NationalBeliefs.isNational(scenario)
            && scenario.mark().appearance().colours().contains(Colour.YELLOW);
    return national || showsYellow(scenario) ? MarkKind.SOUTH_CARDINAL : null;
  }

  static @Nullable MarkKind yellowMeansDanger(Scenario scenario) {
    boolean special = kind(scenario).equals(MarkKind.SPECIAL) && showsYellow(scenario);
    return special ? MarkKind.EMERGENCY_WRECK : null;
  }

  static @Nullable MarkKind everyMarkLateral(Scenario scenario) {
    boolean handless =
        kind(scenario).equals(MarkKind.SPECIAL)
            || kind(scenario).equals(MarkKind.EMERGENCY_WRECK)
            || NationalBeliefs.isNational(scenario);
    return handless && view(scenario) == View.NEAR ? handOfBow(scenario) : null;
  }

  static @Nullable MarkKind yellowTakenForWhite(Scenario scenario) {
    boolean yellow = view(scenario) == View.LIGHT && showsYellow(scenario);
    return yellow ? MarkKind.SAFE_WATER : null;
  }

  static @Nullable MarkKind wreckTakenForSpecial(Scenario scenario) {
    boolean wreck = kind(scenario).equals(MarkKind.EMERGENCY_WRECK) && showsYellow(scenario);
    return wreck ? MarkKind.SPECIAL : null;
  }

  static @Nullable MarkKind stripesMeanSafeWater(Scenario scenario) {
    boolean striped =
        scenario.mark().appearance().pattern() == ColourPattern.VERTICAL
            && view(scenario) == View.NEAR;
    return striped ? MarkKind.SAFE_WATER : null;
  }

  static MarkKind handOfBow(Scenario scenario) {
    Bearing heading = scenario.situation().heading();
    boolean toPort = scenario.mark().bearing().relativeTo(heading) < 0;
    return toPort ? MarkKind.PORT_HAND : MarkKind.STARBOARD_HAND;
  }

  private static MarkKind redHand(Scenario scenario) {
    Region region = scenario.practice().region();
    return region.portHand() == Colour.RED ? MarkKind.PORT_HAND : MarkKind.STARBOARD_HAND;
  }

  private static boolean showsWhite(MarkKind kind) {
    return kind.isCardinal()
        || kind.equals(MarkKind.ISOLATED_DANGER)
        || kind.equals(MarkKind.SAFE_WATER);
  }

  private static boolean showsYellow(Scenario scenario) {
    boolean yellow =
        kind(scenario).equals(MarkKind.SPECIAL) || kind(scenario).equals(MarkKind.EMERGENCY_WRECK);
    return yellow && view(scenario) != View.DISTANT;
  }

  private static boolean topmarkSeen(Scenario scenario) {
    Appearance seen = scenario.mark().appearance();
    return view(scenario) != View.LIGHT && seen.topmark() != null;
  }

  private static MarkKind kind(Scenario scenario) {
    return scenario.mark().kind();
  }

  private static View view(Scenario scenario) {
    return scenario.situation().view();
  }
}
