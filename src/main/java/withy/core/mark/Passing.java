package withy.core.mark;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import withy.core.Term;

/** How a boat passes a mark. */
public enum Passing implements Term {
  /** To port with the conventional direction, to starboard against it. */
  LEAVE_TO_PORT,
  /** To starboard with the conventional direction, to port against it. */
  LEAVE_TO_STARBOARD,
  /** As a port-hand mark of the preferred channel, on the other side for the secondary one. */
  PREFERRED_TO_PORT,
  /** As a starboard-hand mark of the preferred channel, the other side for the secondary one. */
  PREFERRED_TO_STARBOARD,
  /** On the side of the compass that it is named after. */
  NAMED_SIDE,
  /** On either side, near or far as the chart has it. */
  EITHER_SIDE,
  /** To port in both directions. */
  ALWAYS_TO_PORT,
  /** Well clear of it. */
  KEEP_CLEAR,
  /** Never between it and the shore. */
  NOT_INSHORE,
  /** Two marks kept in line lead through. */
  IN_LINE,
  /** It tells no side: the chart says what it marks. */
  UNTOLD;

  /**
   * The side on which the mark is left; empty where none can be told: without a conventional
   * direction, at a junction without a channel wanted, for a cardinal mark, whose hand needs a
   * heading ({@link CardinalRules#hand}), and for marks that tell none.
   *
   * @param intent the channel wanted at a junction
   */
  public Optional<Side> side(Travel travel, @Nullable ChannelIntent intent) {
    return switch (this) {
      case LEAVE_TO_PORT -> travel.apply(Side.LEAVE_TO_PORT);
      case LEAVE_TO_STARBOARD -> travel.apply(Side.LEAVE_TO_STARBOARD);
      case PREFERRED_TO_PORT -> junction(Side.LEAVE_TO_PORT, travel, intent);
      case PREFERRED_TO_STARBOARD -> junction(Side.LEAVE_TO_STARBOARD, travel, intent);
      case EITHER_SIDE -> Optional.of(Side.EITHER_SIDE);
      case ALWAYS_TO_PORT -> Optional.of(Side.LEAVE_TO_PORT);
      case KEEP_CLEAR -> Optional.of(Side.KEEP_CLEAR);
      case NAMED_SIDE, NOT_INSHORE, IN_LINE, UNTOLD -> Optional.empty();
    };
  }

  private static Optional<Side> junction(
      Side preferred, Travel travel, @Nullable ChannelIntent intent) {
    return Optional.ofNullable(intent).flatMap(each -> travel.apply(each.apply(preferred)));
  }
}
