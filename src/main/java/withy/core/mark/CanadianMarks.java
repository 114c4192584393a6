package withy.core.mark;

import static withy.core.mark.Colour.GREEN;
import static withy.core.mark.Colour.ORANGE;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;
import static withy.core.mark.Colour.YELLOW;

import java.util.ArrayList;
import java.util.List;

/**
 * The marks of Canada: those of the system with its customs, and its special buoys. TP 968 says how
 * they look; SOR/99-335 makes it binding for private buoys. Of the special buoys TP 968 fixes
 * purpose and shape of symbol; white bodies, orange bands, flag and Fl Y 4s are from memory of it.
 */
final class CanadianMarks {
  private static final Clause SPECIAL_BUOYS = Documents.canadian("special buoys");
  private static final Clause SYMBOLS_FROM_MEMORY =
      Documents.canadianFromMemory("bands, symbols and lights of the white special buoys");
  private static final Clause LIGHT_FROM_MEMORY =
      Documents.canadianFromMemory("Fl Y 4s of special buoys");
  private static final Clause PRIVATE_BUOYS =
      Clause.read("Private Buoy Regulations, SOR/99-335", "to 25 July 2025", "sections 3 to 6");
  private static final List<String> YELLOW_LIGHTS = List.of("Fl Y 4s");

  private CanadianMarks() {}

  static List<MarkDescription> all() {
    List<MarkDescription> floating = SystemMarks.floating(Customs.CANADA);
    List<MarkDescription> marks = new ArrayList<>(floating);
    marks.addAll(LeadingMarks.canadian());
    marks.add(orange(MarkKind.INFORMATION, Symbol.SQUARE, Demand.READ_NOTICE).build());
    marks.add(orange(MarkKind.HAZARD, Symbol.DIAMOND, Demand.BEWARE_OF_DANGER).build());
    marks.add(orange(MarkKind.CONTROL, Symbol.CIRCLE, Demand.OBEY_RESTRICTION).build());
    marks.add(orange(MarkKind.KEEP_OUT, Symbol.DIAMOND_CROSS, Demand.STAY_OUT).build());
    marks.addAll(localUse());
    marks.addAll(daybeacons());
    marks.addAll(Beacons.of(cardinalsAndDangers(floating)));
    marks.add(privateBuoy());
    return List.copyOf(marks);
  }

  private static MarkDescription.Builder orange(MarkKind kind, Symbol symbol, Demand demand) {
    return special(kind, MarkGroup.REGULATORY)
        .painted(ColourPattern.PLAIN, WHITE)
        .symbol(symbol)
        .asks(Passing.UNTOLD, demand)
        .numbering(Numbering.WORDED)
        .laidDown(SPECIAL_BUOYS, SYMBOLS_FROM_MEMORY);
  }

  private static List<MarkDescription> localUse() {
    return List.of(
        special(MarkKind.MOORING, MarkGroup.LOCAL_USE)
            .painted(ColourPattern.HORIZONTAL, ORANGE, WHITE)
            .bodies(BodyShape.BARREL, BodyShape.SPHERICAL, BodyShape.PILLAR)
            .asks(Passing.UNTOLD, Demand.MAY_MOOR)
            .laidDown(
                Clause.read("Transport Canada, private buoys", "slides", "mooring buoys"),
                LIGHT_FROM_MEMORY)
            .build(),
        yellow(MarkKind.ANCHORAGE, Demand.ANCHOR_WITHIN).symbol(Symbol.ANCHOR).build(),
        special(MarkKind.SWIMMING, MarkGroup.LOCAL_USE)
            .painted(ColourPattern.PLAIN, WHITE)
            .asks(Passing.KEEP_CLEAR, Demand.LEAVE_TO_SWIMMERS)
            .laidDown(SPECIAL_BUOYS, SYMBOLS_FROM_MEMORY)
            .build(),
        special(MarkKind.DIVING, MarkGroup.LOCAL_USE)
            .painted(ColourPattern.PLAIN, WHITE)
            .symbol(Symbol.DIVER_FLAG)
            .asks(Passing.KEEP_CLEAR, Demand.MIND_DIVERS)
            .laidDown(SPECIAL_BUOYS, SYMBOLS_FROM_MEMORY)
            .build(),
        yellow(MarkKind.CAUTIONARY, Demand.TAKE_CARE).toldByChart().build(),
        yellow(MarkKind.SCIENTIFIC, Demand.LEAVE_ALONE)
            .lights(LightRules.special(), List.of("Fl(5) Y 20s"))
            .asks(Passing.KEEP_CLEAR, Demand.LEAVE_ALONE)
            .toldByChart()
            .build());
  }

  private static MarkDescription.Builder yellow(MarkKind kind, Demand demand) {
    return special(kind, MarkGroup.LOCAL_USE)
        .painted(ColourPattern.PLAIN, YELLOW)
        .topmark(Topmark.of(TopmarkShape.X, YELLOW), List.of())
        .asks(Passing.UNTOLD, demand)
        .numbering(Numbering.LETTERED)
        .laidDown(SPECIAL_BUOYS, LIGHT_FROM_MEMORY);
  }

  /** The shape of a special buoy means nothing. */
  private static MarkDescription.Builder special(MarkKind kind, MarkGroup group) {
    return MarkDescription.of(kind, group)
        .words("mark.canada." + kind.id(), "mark.canada." + kind.id())
        .bodies(BodyShape.PILLAR, BodyShape.CAN, BodyShape.SPAR)
        .lights(LightRules.special(), YELLOW_LIGHTS);
  }

  private static List<MarkDescription> daybeacons() {
    return List.of(
        daybeacon(MarkKind.PORT_HAND, BoardShape.SQUARE, GREEN, Passing.LEAVE_TO_PORT),
        daybeacon(MarkKind.STARBOARD_HAND, BoardShape.TRIANGLE, RED, Passing.LEAVE_TO_STARBOARD));
  }

  private static MarkDescription daybeacon(
      MarkKind kind, BoardShape shape, Colour colour, Passing passing) {
    String id = kind.id() + "-daybeacon";
    return MarkDescription.of(kind, MarkGroup.FIXED)
        .id(id)
        .words("mark.canada." + id, "mark.canada." + id)
        .painted(ColourPattern.PLAIN, colour)
        .board(new Board(shape, colour, WHITE, null), Structure.PILE, Structure.LATTICE)
        .asks(passing, Demand.KEEP_TO_ITS_SIDE)
        .numbering(Numbering.NUMBERED)
        .laidDown(
            Clause.read("Transport Canada, Aids to Navigation", "web page", "daybeacons"),
            Documents.canadian("daybeacons"))
        .build();
  }

  /** Lateral beacons are daybeacons; the other classes have fixed marks as everywhere. */
  private static List<MarkDescription> cardinalsAndDangers(List<MarkDescription> floating) {
    return floating.stream()
        .filter(
            each -> each.group() == MarkGroup.CARDINAL || each.group() == MarkGroup.ISOLATED_DANGER)
        .toList();
  }

  /** Any class may be private; a port hand one shows how it is lettered. */
  private static MarkDescription privateBuoy() {
    return MarkDescription.of(MarkKind.PORT_HAND, MarkGroup.PRIVATE)
        .id("private-buoy")
        .words("mark.canada.private-buoy", "mark.canada.private-buoy")
        .painted(ColourPattern.PLAIN, GREEN)
        .bodies(BodyShape.CAN, BodyShape.PILLAR)
        .lights(LightRules.lateral(GREEN), Customs.CANADA.lateral(GREEN))
        .asks(Passing.LEAVE_TO_PORT, Demand.KEEP_TO_ITS_SIDE)
        .numbering(Numbering.PRIV)
        .toldByChart()
        .laidDown(PRIVATE_BUOYS)
        .build();
  }
}
