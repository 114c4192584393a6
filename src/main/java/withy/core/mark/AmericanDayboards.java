package withy.core.mark;

import static withy.core.mark.Colour.BLACK;
import static withy.core.mark.Colour.GREEN;
import static withy.core.mark.Colour.ORANGE;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;
import static withy.core.mark.Colour.YELLOW;

import java.util.List;

/**
 * The dayboards of the USA, named by letters in the lists of lights and on charts. Their geometry
 * was read on the boards of NOAA's charts; the letters, and the boards that did not occur there,
 * are from memory of the key to those lists.
 */
final class AmericanDayboards {
  private static final Clause LETTERS =
      Clause.remembered("US Chart No. 1 and Light List key", "no edition", "dayboard letters");
  private static final Structure[] ON = {Structure.PILE, Structure.LATTICE};

  private AmericanDayboards() {}

  static List<MarkDescription> all() {
    return List.of(
        hand(MarkKind.PORT_HAND, "dayboard-sg", BoardShape.SQUARE, GREEN, Passing.LEAVE_TO_PORT),
        hand(
            MarkKind.STARBOARD_HAND,
            "dayboard-tr",
            BoardShape.TRIANGLE,
            RED,
            Passing.LEAVE_TO_STARBOARD),
        junction("dayboard-jg", BoardShape.SQUARE, GREEN, RED, Passing.PREFERRED_TO_PORT),
        junction("dayboard-jr", BoardShape.TRIANGLE, RED, GREEN, Passing.PREFERRED_TO_STARBOARD),
        board(MarkKind.SAFE_WATER, MarkGroup.FIXED, "dayboard-mr", BoardShape.OCTAGON, RED)
            .painted(ColourPattern.VERTICAL, WHITE, RED)
            .asks(Passing.EITHER_SIDE, Demand.GO_EITHER_SIDE)
            .numbering(Numbering.LETTERED)
            .build(),
        board(MarkKind.SPECIAL, MarkGroup.FIXED, "dayboard-ny", BoardShape.DIAMOND, YELLOW)
            .painted(ColourPattern.PLAIN, YELLOW)
            .numbering(Numbering.LETTERED)
            .build(),
        notice("dayboard-nb", BLACK),
        notice("dayboard-ng", GREEN),
        notice("dayboard-nr", RED),
        board(MarkKind.HAZARD, MarkGroup.NOTICE_BOARD, "dayboard-nw", BoardShape.DIAMOND, ORANGE)
            .painted(ColourPattern.PLAIN, WHITE)
            .asks(Passing.UNTOLD, Demand.BEWARE_OF_DANGER)
            .numbering(Numbering.WORDED)
            .build(),
        board(
                MarkKind.INFORMATION,
                MarkGroup.NOTICE_BOARD,
                "dayboard-nl",
                BoardShape.RECTANGLE,
                ORANGE)
            .painted(ColourPattern.PLAIN, WHITE)
            .asks(Passing.UNTOLD, Demand.READ_NOTICE)
            .numbering(Numbering.WORDED)
            .build());
  }

  private static MarkDescription hand(
      MarkKind kind, String id, BoardShape shape, Colour colour, Passing passing) {
    return board(kind, MarkGroup.FIXED, id, shape, colour)
        .painted(ColourPattern.PLAIN, colour)
        .asks(passing, Demand.KEEP_TO_ITS_SIDE)
        .numbering(Numbering.NUMBERED)
        .build();
  }

  /** The upper half decides: green on top is left to port for the preferred channel. */
  private static MarkDescription junction(
      String id, BoardShape shape, Colour top, Colour below, Passing passing) {
    MarkKind kind =
        passing == Passing.PREFERRED_TO_PORT
            ? MarkKind.PREFERRED_CHANNEL_TO_STARBOARD
            : MarkKind.PREFERRED_CHANNEL_TO_PORT;
    return board(kind, MarkGroup.FIXED, id, shape, top)
        .painted(ColourPattern.HORIZONTAL, top, below)
        .asks(passing, Demand.CHOOSE_CHANNEL)
        .numbering(Numbering.LETTERED)
        .build();
  }

  /** A board of four sectors: it tells no side, only a place. */
  private static MarkDescription notice(String id, Colour colour) {
    return board(MarkKind.INFORMATION, MarkGroup.NOTICE_BOARD, id, BoardShape.DIAMOND, WHITE)
        .painted(ColourPattern.SQUARED, WHITE, colour)
        .asks(Passing.UNTOLD, Demand.FIND_POSITION)
        .numbering(Numbering.LETTERED)
        .build();
  }

  private static MarkDescription.Builder board(
      MarkKind kind, MarkGroup group, String id, BoardShape shape, Colour border) {
    return MarkDescription.of(kind, group)
        .id(id)
        .words("mark.usa." + id, "mark.usa." + id)
        .board(Board.of(shape, border), ON)
        .laidDown(MarkRule.DAYBOARDS.clause(), LETTERS);
  }
}
