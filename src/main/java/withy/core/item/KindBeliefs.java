package withy.core.item;

import org.jspecify.annotations.Nullable;
import withy.core.geometry.Bearing;
import withy.core.mark.Appearance;
import withy.core.mark.Colour;
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
  private KindBeliefs() {}

  static @Nullable MarkKind otherRegion(Scenario scenario) {
    return view(scenario) == View.DISTANT ? null : otherHand(kind(scenario));
  }

  static @Nullable MarkKind shapeSwapped(Scenario scenario) {
    boolean lateral = view(scenario) == View.DISTANT && kind(scenario).isLateral();
    return lateral ? otherHand(kind(scenario)) : null;
  }

  static @Nullable MarkKind bandOverlooked(Scenario scenario) {
    return view(scenario) == View.NEAR ? bandedOrPlain(kind(scenario)) : null;
  }

  static @Nullable MarkKind compositeReadAsGroup(Scenario scenario) {
    boolean seen = view(scenario) == View.LIGHT && kind(scenario).isPreferredChannel();
    return seen ? bandedOrPlain(kind(scenario)) : null;
  }

  static @Nullable MarkKind middleBand(Scenario scenario) {
    boolean seen = view(scenario) == View.NEAR && kind(scenario).isPreferredChannel();
    return seen ? otherHand(kind(scenario)) : null;
  }

  static @Nullable MarkKind channelNameAsSide(Scenario scenario) {
    boolean seen = view(scenario) != View.DISTANT && kind(scenario).isPreferredChannel();
    return seen ? otherHand(kind(scenario)) : null;
  }

  /** Only Canada names the marks at a junction after the hand on which they are left. */
  static @Nullable MarkKind bifurcationName(Scenario scenario) {
    return scenario.practice() == Practice.CANADA ? channelNameAsSide(scenario) : null;
  }

  static @Nullable MarkKind bandsMeanDanger(Scenario scenario) {
    boolean seen = view(scenario) == View.NEAR && kind(scenario).isPreferredChannel();
    return seen ? MarkKind.ISOLATED_DANGER : null;
  }

  static @Nullable MarkKind northSouthColours(Scenario scenario) {
    return view(scenario) == View.NEAR ? northSouth(kind(scenario)) : null;
  }

  static @Nullable MarkKind eastWestColours(Scenario scenario) {
    return view(scenario) == View.NEAR ? eastWest(kind(scenario)) : null;
  }

  static @Nullable MarkKind conesPointToDanger(Scenario scenario) {
    return topmarkSeen(scenario) ? northSouth(kind(scenario)) : null;
  }

  static @Nullable MarkKind eastWestTopmarks(Scenario scenario) {
    return topmarkSeen(scenario) ? eastWest(kind(scenario)) : null;
  }

  /** North and east are black on top with a cone up, south and west yellow with a cone down. */
  static @Nullable MarkKind upperHalf(Scenario scenario) {
    return view(scenario) == View.LIGHT
        ? null
        : switch (kind(scenario)) {
          case NORTH_CARDINAL -> MarkKind.EAST_CARDINAL;
          case EAST_CARDINAL -> MarkKind.NORTH_CARDINAL;
          case SOUTH_CARDINAL -> MarkKind.WEST_CARDINAL;
          case WEST_CARDINAL -> MarkKind.SOUTH_CARDINAL;
          default -> null;
        };
  }

  /** Reads each light as the one a quarter earlier on the clock. */
  static @Nullable MarkKind clockFace(Scenario scenario) {
    return view(scenario) != View.LIGHT
        ? null
        : switch (kind(scenario)) {
          case NORTH_CARDINAL -> MarkKind.WEST_CARDINAL;
          case EAST_CARDINAL -> MarkKind.NORTH_CARDINAL;
          case SOUTH_CARDINAL -> MarkKind.EAST_CARDINAL;
          case WEST_CARDINAL -> MarkKind.SOUTH_CARDINAL;
          default -> null;
        };
  }

  /** Counts the quarters of the clock the wrong way round: three flashes west, nine east. */
  static @Nullable MarkKind clockReversed(Scenario scenario) {
    return view(scenario) == View.LIGHT ? eastWest(kind(scenario)) : null;
  }

  static @Nullable MarkKind longFlashCounted(Scenario scenario) {
    boolean south = kind(scenario) == MarkKind.SOUTH_CARDINAL && view(scenario) == View.LIGHT;
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
    return switch (kind(scenario)) {
      case NORTH_CARDINAL, EAST_CARDINAL, SOUTH_CARDINAL, WEST_CARDINAL -> MarkKind.ISOLATED_DANGER;
      case ISOLATED_DANGER -> MarkKind.EAST_CARDINAL;
      case SAFE_WATER -> MarkKind.NORTH_CARDINAL;
      default -> bandedOrPlain(kind(scenario));
    };
  }

  static @Nullable MarkKind spheresSwapped(Scenario scenario) {
    return switch (kind(scenario)) {
      case ISOLATED_DANGER -> MarkKind.SAFE_WATER;
      case SAFE_WATER -> MarkKind.ISOLATED_DANGER;
      default -> null;
    };
  }

  static @Nullable MarkKind redMeansLateral(Scenario scenario) {
    boolean red =
        kind(scenario) == MarkKind.SAFE_WATER || kind(scenario) == MarkKind.ISOLATED_DANGER;
    return red && view(scenario) == View.NEAR ? redHand(scenario) : null;
  }

  /** Takes the stripes of a safe-water mark for the bands of a mark at a junction. */
  static @Nullable MarkKind patternIgnored(Scenario scenario) {
    boolean striped = kind(scenario) == MarkKind.SAFE_WATER && view(scenario) == View.NEAR;
    return striped ? bandedOrPlain(redHand(scenario)) : null;
  }

  static @Nullable MarkKind pairMeansCardinal(Scenario scenario) {
    boolean pair = kind(scenario) == MarkKind.ISOLATED_DANGER && topmarkSeen(scenario);
    return pair ? MarkKind.EAST_CARDINAL : null;
  }

  static @Nullable MarkKind singleMeansLateral(Scenario scenario) {
    return view(scenario) != View.DISTANT
        ? null
        : switch (kind(scenario)) {
          case SAFE_WATER, SPECIAL, EMERGENCY_WRECK -> MarkKind.PORT_HAND;
          default -> null;
        };
  }

  static @Nullable MarkKind crossesSwapped(Scenario scenario) {
    return !topmarkSeen(scenario)
        ? null
        : switch (kind(scenario)) {
          case SPECIAL -> MarkKind.EMERGENCY_WRECK;
          case EMERGENCY_WRECK -> MarkKind.SPECIAL;
          default -> null;
        };
  }

  static @Nullable MarkKind yellowMeansCardinal(Scenario scenario) {
    return showsYellow(scenario) ? MarkKind.SOUTH_CARDINAL : null;
  }

  static @Nullable MarkKind yellowMeansDanger(Scenario scenario) {
    boolean special = kind(scenario) == MarkKind.SPECIAL && showsYellow(scenario);
    return special ? MarkKind.EMERGENCY_WRECK : null;
  }

  static @Nullable MarkKind everyMarkLateral(Scenario scenario) {
    boolean plain = kind(scenario) == MarkKind.SPECIAL && view(scenario) == View.NEAR;
    return plain ? handOfBow(scenario) : null;
  }

  static @Nullable MarkKind yellowTakenForWhite(Scenario scenario) {
    boolean yellow = view(scenario) == View.LIGHT && showsYellow(scenario);
    return yellow ? MarkKind.SAFE_WATER : null;
  }

  static @Nullable MarkKind wreckTakenForSpecial(Scenario scenario) {
    boolean wreck = kind(scenario) == MarkKind.EMERGENCY_WRECK && showsYellow(scenario);
    return wreck ? MarkKind.SPECIAL : null;
  }

  static @Nullable MarkKind stripesMeanSafeWater(Scenario scenario) {
    boolean striped = kind(scenario) == MarkKind.EMERGENCY_WRECK && view(scenario) == View.NEAR;
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

  private static @Nullable MarkKind otherHand(MarkKind kind) {
    return switch (kind) {
      case PORT_HAND -> MarkKind.STARBOARD_HAND;
      case STARBOARD_HAND -> MarkKind.PORT_HAND;
      case PREFERRED_CHANNEL_TO_STARBOARD -> MarkKind.PREFERRED_CHANNEL_TO_PORT;
      case PREFERRED_CHANNEL_TO_PORT -> MarkKind.PREFERRED_CHANNEL_TO_STARBOARD;
      default -> null;
    };
  }

  /** The mark of the same colour on top, with a band instead of without and the reverse. */
  private static @Nullable MarkKind bandedOrPlain(MarkKind kind) {
    return switch (kind) {
      case PORT_HAND -> MarkKind.PREFERRED_CHANNEL_TO_STARBOARD;
      case STARBOARD_HAND -> MarkKind.PREFERRED_CHANNEL_TO_PORT;
      case PREFERRED_CHANNEL_TO_STARBOARD -> MarkKind.PORT_HAND;
      case PREFERRED_CHANNEL_TO_PORT -> MarkKind.STARBOARD_HAND;
      default -> null;
    };
  }

  private static @Nullable MarkKind northSouth(MarkKind kind) {
    return switch (kind) {
      case NORTH_CARDINAL -> MarkKind.SOUTH_CARDINAL;
      case SOUTH_CARDINAL -> MarkKind.NORTH_CARDINAL;
      default -> null;
    };
  }

  private static @Nullable MarkKind eastWest(MarkKind kind) {
    return switch (kind) {
      case EAST_CARDINAL -> MarkKind.WEST_CARDINAL;
      case WEST_CARDINAL -> MarkKind.EAST_CARDINAL;
      default -> null;
    };
  }

  private static boolean showsWhite(MarkKind kind) {
    return kind.isCardinal() || kind == MarkKind.ISOLATED_DANGER || kind == MarkKind.SAFE_WATER;
  }

  private static boolean showsYellow(Scenario scenario) {
    boolean yellow =
        kind(scenario) == MarkKind.SPECIAL || kind(scenario) == MarkKind.EMERGENCY_WRECK;
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
