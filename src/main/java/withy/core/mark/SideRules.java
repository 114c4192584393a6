package withy.core.mark;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;

/**
 * On which side a boat leaves a mark. Each rule can be asked by itself, so that a mistaken belief
 * can be applied to the same situation.
 */
public final class SideRules {
  private SideRules() {}

  /**
   * The side by the rules of a practice; empty where no side can be told: a lateral mark without a
   * conventional direction, a preferred-channel mark without a channel wanted, a special mark, and
   * a cardinal mark, whose hand needs a heading ({@link CardinalRules#hand}).
   *
   * @param intent the channel wanted at a junction
   */
  public static Optional<Side> side(
      Practice practice, MarkKind kind, Travel travel, @Nullable ChannelIntent intent) {
    return practice.mark(kind).flatMap(mark -> mark.passing().side(travel, intent));
  }

  /**
   * The side of one mark as it looks, where some waters have rules of their own: on the
   * Intracoastal Waterway a yellow triangle or square decides against colour, number and light (33
   * CFR 62.49), while a yellow band tells nothing.
   *
   * @param waters null for all others
   * @param intent the channel wanted at a junction
   */
  public static Optional<Side> side(
      Practice practice,
      MarkKind kind,
      Appearance seen,
      @Nullable Waters waters,
      Travel travel,
      @Nullable ChannelIntent intent) {
    if (waters != null && seen.symbol() != null && seen.symbol().decidesSide()) {
      for (MarkDescription each : practice.marks()) {
        if (waters == each.waters() && each.look().symbol() == seen.symbol()) {
          return each.passing().side(travel, intent);
        }
      }
    }
    return side(practice, kind, travel, intent);
  }

  /**
   * The side that a light tells on the Western Rivers, red, green or white: one flash stands on the
   * green side, two on the red (33 CFR 62.51); empty for any other light.
   */
  public static Optional<Side> byRiverLight(
      Practice practice, LightCharacter light, Travel travel) {
    for (MarkDescription each : practice.marks()) {
      if (each.waters() == Waters.WESTERN_RIVERS && each.lightLimit().allows(light)) {
        return each.passing().side(travel, null);
      }
    }
    return Optional.empty();
  }

  /**
   * The side on which a region leaves a lateral colour; empty for a colour that is not lateral, and
   * without a conventional direction.
   */
  public static Optional<Side> byColour(Region region, Colour colour, Travel travel) {
    if (colour == region.portHand()) {
      return travel.apply(Side.LEAVE_TO_PORT);
    }
    return colour == region.starboardHand()
        ? travel.apply(Side.LEAVE_TO_STARBOARD)
        : Optional.empty();
  }

  /** The side that a body tells in both regions; empty for a body that tells none. */
  public static Optional<Side> byShape(BodyShape body, Travel travel) {
    return switch (body) {
      case CAN -> travel.apply(Side.LEAVE_TO_PORT);
      case CONICAL -> travel.apply(Side.LEAVE_TO_STARBOARD);
      default -> Optional.empty();
    };
  }

  /** The side that a topmark tells in both regions; empty for one that tells none. */
  public static Optional<Side> byTopmark(TopmarkShape topmark, Travel travel) {
    return switch (topmark) {
      case CAN -> travel.apply(Side.LEAVE_TO_PORT);
      case CONE_UP -> travel.apply(Side.LEAVE_TO_STARBOARD);
      default -> Optional.empty();
    };
  }
}
