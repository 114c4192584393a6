package withy.core.mark;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The two marks of a leading line. Their colours and lights are the authority's to choose (R1001,
 * other marks); the boards here are those that a practice has.
 */
final class LeadingMarks {
  private LeadingMarks() {}

  /** White boards with a red stripe, as authorities under either region have them. */
  static List<MarkDescription> of(Customs customs) {
    return List.of(
        mark(customs, MarkKind.LEADING_FRONT, List.of("Iso W 4s", "F W", "Oc W 6s"))
            .painted(ColourPattern.VERTICAL, Colour.WHITE, Colour.RED, Colour.WHITE)
            .board(board(null), Structure.LATTICE, Structure.PILE)
            .build(),
        mark(customs, MarkKind.LEADING_REAR, List.of("Iso W 4s", "F W", "Oc W 6s"))
            .painted(ColourPattern.VERTICAL, Colour.WHITE, Colour.RED, Colour.WHITE)
            .board(board(null), Structure.LATTICE, Structure.TOWER)
            .build());
  }

  /** TP 968: the two boards make the halves of an hourglass, a stripe down the middle. */
  static List<MarkDescription> canadian() {
    return List.of(
        mark(Customs.CANADA, MarkKind.LEADING_FRONT, List.of("F W", "Iso W 4s"))
            .painted(ColourPattern.VERTICAL, Colour.WHITE, Colour.RED, Colour.WHITE)
            .board(board(Taper.UP), Structure.LATTICE)
            .laidDown(Documents.canadian("ranges"), MarkRule.LEADING_LINE.clause())
            .build(),
        mark(Customs.CANADA, MarkKind.LEADING_REAR, List.of("F W", "Iso W 4s"))
            .painted(ColourPattern.VERTICAL, Colour.WHITE, Colour.RED, Colour.WHITE)
            .board(board(Taper.DOWN), Structure.LATTICE)
            .laidDown(Documents.canadian("ranges"), MarkRule.LEADING_LINE.clause())
            .build());
  }

  /** Boards KRW: red ground, white stripe (geometry read on charts, letters from memory). */
  static List<MarkDescription> american() {
    return List.of(
        mark(Customs.USA, MarkKind.LEADING_FRONT, List.of("Q W", "Iso W 6s"))
            .painted(ColourPattern.VERTICAL, Colour.RED, Colour.WHITE, Colour.RED)
            .board(Board.of(BoardShape.RECTANGLE, Colour.RED), Structure.LATTICE, Structure.PILE)
            .laidDown(MarkRule.DAYBOARDS.clause(), MarkRule.LEADING_LINE.clause())
            .build(),
        mark(Customs.USA, MarkKind.LEADING_REAR, List.of("Iso W 6s", "F W"))
            .painted(ColourPattern.VERTICAL, Colour.RED, Colour.WHITE, Colour.RED)
            .board(Board.of(BoardShape.RECTANGLE, Colour.RED), Structure.LATTICE, Structure.TOWER)
            .laidDown(MarkRule.DAYBOARDS.clause(), MarkRule.LEADING_LINE.clause())
            .build());
  }

  private static Board board(@Nullable Taper taper) {
    return new Board(BoardShape.RECTANGLE, Colour.WHITE, null, taper);
  }

  private static MarkDescription.Builder mark(Customs customs, MarkKind kind, List<String> lights) {
    return MarkDescription.of(kind, MarkGroup.LEADING)
        .words(customs.names() + kind.id(), "mark." + kind.id())
        .lights(LightRules.any(), lights)
        .asks(Passing.IN_LINE, Demand.KEEP_IN_LINE)
        .toldByChart()
        .laidDown(MarkRule.LEADING_LINE.clause());
  }
}
