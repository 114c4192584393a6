package withy.core.mark;

import static withy.core.mark.Colour.BLACK;
import static withy.core.mark.Colour.BLUE;
import static withy.core.mark.Colour.GREEN;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;

import java.util.ArrayList;
import java.util.List;

/**
 * The marks of the USA, 33 CFR 62: those of the system with its customs but no cardinal marks,
 * information and regulatory marks, dayboards, and what holds on the Intracoastal Waterway and the
 * Western Rivers alone.
 */
final class AmericanMarks {
  private static final List<String> WHITE_LIGHTS = List.of("Fl W 4s", "Fl W 2.5s");
  private static final Clause WHITE_FROM_MEMORY =
      Documents.federalFromMemory("white lights of information and regulatory marks");

  private AmericanMarks() {}

  static List<MarkDescription> all() {
    List<MarkDescription> marks = new ArrayList<>();
    for (MarkDescription each : SystemMarks.floating(Customs.USA)) {
      if (each.group() != MarkGroup.CARDINAL) {
        marks.add(each);
      }
    }
    marks.addAll(LeadingMarks.american());
    marks.addAll(regulatory());
    marks.addAll(localUse());
    marks.addAll(AmericanDayboards.all());
    marks.addAll(intracoastal());
    marks.addAll(westernRivers());
    return List.copyOf(marks);
  }

  private static List<MarkDescription> regulatory() {
    return List.of(
        orange(MarkKind.INFORMATION, Symbol.SQUARE, Demand.READ_NOTICE, "62.33(a)(4)"),
        orange(MarkKind.HAZARD, Symbol.DIAMOND, Demand.BEWARE_OF_DANGER, "62.33(a)(1)"),
        orange(MarkKind.CONTROL, Symbol.CIRCLE, Demand.OBEY_RESTRICTION, "62.33(a)(3)"),
        orange(MarkKind.KEEP_OUT, Symbol.DIAMOND_CROSS, Demand.STAY_OUT, "62.33(a)(2)"));
  }

  private static MarkDescription orange(
      MarkKind kind, Symbol symbol, Demand demand, String section) {
    return white(kind, MarkGroup.REGULATORY)
        .painted(ColourPattern.PLAIN, WHITE)
        .symbol(symbol)
        .asks(Passing.UNTOLD, demand)
        .numbering(Numbering.WORDED)
        .laidDown(Documents.federal(section), Documents.federal("62.33(b)"), WHITE_FROM_MEMORY)
        .build();
  }

  private static List<MarkDescription> localUse() {
    return List.of(
        white(MarkKind.MOORING, MarkGroup.LOCAL_USE)
            .painted(ColourPattern.HORIZONTAL, WHITE, BLUE, WHITE)
            .bodies(BodyShape.SPHERICAL, BodyShape.BARREL, BodyShape.CAN)
            .asks(Passing.UNTOLD, Demand.MAY_MOOR)
            .laidDown(Documents.federal("62.35"), WHITE_FROM_MEMORY)
            .build(),
        white(MarkKind.INLAND_OBSTRUCTION, MarkGroup.LOCAL_USE)
            .painted(ColourPattern.VERTICAL, WHITE, BLACK)
            .lights(light -> false, List.of())
            .asks(Passing.NOT_INSHORE, Demand.STAY_OFFSHORE)
            .laidDown(Documents.federalFromMemory("62.32, seen as an excerpt"))
            .build());
  }

  private static MarkDescription.Builder white(MarkKind kind, MarkGroup group) {
    return MarkDescription.of(kind, group)
        .words("mark.usa." + kind.id(), "mark.usa." + kind.id())
        .bodies(BodyShape.PILLAR, BodyShape.CAN)
        .lights(LightRules.plainWhite(), WHITE_LIGHTS);
  }

  /** 33 CFR 62.49: the yellow symbol decides, whatever colour, number and light say. */
  private static List<MarkDescription> intracoastal() {
    return List.of(
        waterway("intracoastal-triangle", Symbol.YELLOW_TRIANGLE, "62.49(a)(1)")
            .asks(Passing.LEAVE_TO_STARBOARD, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        waterway("intracoastal-square", Symbol.YELLOW_SQUARE, "62.49(a)(2)")
            .asks(Passing.LEAVE_TO_PORT, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        waterway("intracoastal-band", Symbol.YELLOW_BAND, "62.49(a)(3)")
            .asks(Passing.LEAVE_TO_STARBOARD, Demand.KEEP_TO_ITS_SIDE)
            .build());
  }

  /** A triangle on a green can, a square and a band on a red nun are the telling cases. */
  private static MarkDescription.Builder waterway(String id, Symbol symbol, String section) {
    boolean red = symbol != Symbol.YELLOW_TRIANGLE;
    Colour colour = red ? RED : GREEN;
    return MarkDescription.of(
            red ? MarkKind.STARBOARD_HAND : MarkKind.PORT_HAND, MarkGroup.INTRACOASTAL)
        .id(id)
        .words("mark.usa." + id, "mark.usa." + id)
        .painted(ColourPattern.PLAIN, colour)
        .bodies(red ? BodyShape.CONICAL : BodyShape.CAN, BodyShape.PILLAR)
        .symbol(symbol)
        .lights(Customs.USA.lateralLimit(colour), Customs.USA.lateral(colour))
        .numbering(Numbering.NUMBERED)
        .toldByChart()
        .onlyIn(Waters.INTRACOASTAL)
        .laidDown(Documents.federal(section), Documents.federal("62.49(b)"));
  }

  /**
   * 33 CFR 62.51: one flash on the green side, two on the red, also in white; miles, no numbers.
   */
  private static List<MarkDescription> westernRivers() {
    return List.of(
        river(MarkKind.PORT_HAND, GREEN, 1, List.of("Fl G 4s", "Fl W 4s"))
            .bodies(BodyShape.CAN, BodyShape.PILLAR)
            .asks(Passing.LEAVE_TO_PORT, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        river(MarkKind.STARBOARD_HAND, RED, 2, List.of("Fl(2) R 5s", "Fl(2) W 5s"))
            .bodies(BodyShape.CONICAL, BodyShape.PILLAR)
            .asks(Passing.LEAVE_TO_STARBOARD, Demand.KEEP_TO_ITS_SIDE)
            .build(),
        crossing("crossing-board-green", GREEN),
        crossing("crossing-board-red", RED));
  }

  private static MarkDescription.Builder river(
      MarkKind kind, Colour colour, int flashes, List<String> lights) {
    String id = "western-rivers-" + kind.id();
    return MarkDescription.of(kind, MarkGroup.WESTERN_RIVERS)
        .id(id)
        .words("mark.usa." + id, "mark.usa." + id)
        .painted(ColourPattern.PLAIN, colour)
        .lights(LightRules.river(colour, flashes), lights)
        .numbering(Numbering.BARE)
        .toldByChart()
        .onlyIn(Waters.WESTERN_RIVERS)
        .laidDown(Documents.federal("62.51(b)"), Documents.federal("62.45(c)"));
  }

  private static MarkDescription crossing(String id, Colour colour) {
    return MarkDescription.of(MarkKind.CROSSING_BOARD, MarkGroup.WESTERN_RIVERS)
        .id(id)
        .words("mark.usa.crossing-board", "mark.usa." + id)
        .painted(ColourPattern.SQUARED, colour, WHITE)
        .board(Board.of(BoardShape.DIAMOND, colour), Structure.LATTICE, Structure.PILE)
        .asks(Passing.UNTOLD, Demand.CROSS_OVER)
        .numbering(Numbering.RIVER_MILES)
        .onlyIn(Waters.WESTERN_RIVERS)
        .laidDown(Documents.federal("62.51(b)(4)"), Documents.federalFromMemory("letters CG, CR"))
        .build();
  }
}
