package withy.drawing;

import static withy.core.mark.Colour.BLACK;
import static withy.core.mark.Colour.BLUE;
import static withy.core.mark.Colour.GREEN;
import static withy.core.mark.Colour.ORANGE;
import static withy.core.mark.Colour.RED;
import static withy.core.mark.Colour.WHITE;
import static withy.core.mark.Colour.YELLOW;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import withy.core.light.LightCharacter;
import withy.core.mark.Appearance;
import withy.core.mark.Board;
import withy.core.mark.BoardShape;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.MarkKind;
import withy.core.mark.MarkingRules;
import withy.core.mark.Practice;
import withy.core.mark.Structure;
import withy.core.mark.Symbol;
import withy.core.mark.Taper;
import withy.core.mark.Topmark;
import withy.core.mark.TopmarkShape;

/** Appearances that between them use every shape, pattern, symbol, board and structure. */
final class Specimens {
  private static final LightCharacter YELLOW_LIGHT = LightCharacter.parse("Fl Y 4s");

  private Specimens() {}

  static Map<String, Map<String, Appearance>> sheets() {
    Map<String, Map<String, Appearance>> sheets = new LinkedHashMap<>();
    sheets.put("topmarks", topmarks());
    sheets.put("symbols", symbols());
    sheets.put("boards", boards());
    sheets.put("structures", structures());
    return sheets;
  }

  /** One look of each kind of every practice, then all that the sheets add. */
  static Map<String, Appearance> everyKind() {
    Map<String, Appearance> all = new LinkedHashMap<>();
    for (Practice practice : Practice.values()) {
      for (MarkKind kind : MarkingRules.kinds(practice)) {
        all.putIfAbsent(kind.id() + " " + practice.region(), Pictures.typical(practice, kind));
      }
    }
    all.putAll(symbols());
    all.putAll(boards());
    all.putAll(structures());
    return all;
  }

  static Map<String, Appearance> topmarks() {
    Map<String, Appearance> all = new LinkedHashMap<>();
    for (BodyShape body : BodyShape.values()) {
      for (TopmarkShape shape : TopmarkShape.values()) {
        if (body == BodyShape.PILLAR
            || body == BodyShape.BEACON
            || shape.ordinal() == body.ordinal()) {
          Topmark topmark = Topmark.of(shape, YELLOW);
          all.put(
              body.id() + " " + shape.id(),
              new Appearance(body, ColourPattern.PLAIN, List.of(YELLOW), topmark, null));
        }
      }
    }
    return all;
  }

  static Map<String, Appearance> symbols() {
    Map<String, Appearance> all = new LinkedHashMap<>();
    for (Symbol symbol : Symbol.values()) {
      for (BodyShape body : BodyShape.values()) {
        if (body != BodyShape.DAYBOARD && body != BodyShape.BEACON) {
          Colour ground = ground(symbol);
          Appearance look =
              symbolled(body, symbol, ground, body == BodyShape.PILLAR ? YELLOW_LIGHT : null);
          all.put(
              symbol.id() + " " + body.id() + (symbol.isIntracoastal() ? " labelled" : ""), look);
        }
      }
    }
    all.put("mooring canada", moored(BodyShape.SPHERICAL, ORANGE, WHITE));
    all.put("mooring canada barrel", moored(BodyShape.BARREL, ORANGE, WHITE));
    all.put("mooring usa", moored(BodyShape.SPHERICAL, WHITE, BLUE, WHITE));
    all.put("mooring usa can", moored(BodyShape.CAN, WHITE, BLUE, WHITE));
    for (BodyShape body : List.of(BodyShape.CAN, BodyShape.PILLAR, BodyShape.SPAR)) {
      all.put(
          "inland obstruction " + body.id(),
          new Appearance(body, ColourPattern.VERTICAL, List.of(WHITE, BLACK), null, null));
    }
    all.put(
        "swimming",
        new Appearance(BodyShape.CAN, ColourPattern.PLAIN, List.of(WHITE), null, YELLOW_LIGHT));
    all.put(
        "squared can",
        new Appearance(BodyShape.CAN, ColourPattern.SQUARED, List.of(YELLOW, BLACK), null, null));
    all.put(
        "diagonal spar",
        new Appearance(BodyShape.SPAR, ColourPattern.DIAGONAL, List.of(RED, WHITE), null, null));
    return all;
  }

  private static Colour ground(Symbol symbol) {
    return symbol.isIntracoastal()
        ? (symbol == Symbol.YELLOW_SQUARE ? RED : GREEN)
        : symbol == Symbol.ANCHOR ? YELLOW : WHITE;
  }

  private static Appearance symbolled(
      BodyShape body, Symbol symbol, Colour ground, @Nullable LightCharacter light) {
    return new Appearance(
        body, ColourPattern.PLAIN, List.of(ground), symbol, null, null, null, light);
  }

  private static Appearance moored(BodyShape body, Colour... bands) {
    return new Appearance(body, ColourPattern.HORIZONTAL, List.of(bands), null, null);
  }

  static Map<String, Appearance> boards() {
    Map<String, Appearance> all = new LinkedHashMap<>();
    Board square = Board.of(BoardShape.SQUARE, GREEN);
    Board triangle = Board.of(BoardShape.TRIANGLE, RED);
    all.put("usa port-hand SG", board(square, ColourPattern.PLAIN, GREEN));
    all.put("usa starboard TR", board(triangle, ColourPattern.PLAIN, RED));
    all.put("usa JG", board(square, ColourPattern.HORIZONTAL, GREEN, RED));
    all.put("usa JR", board(triangle, ColourPattern.HORIZONTAL, RED, GREEN));
    all.put(
        "usa MR", board(Board.of(BoardShape.OCTAGON, WHITE), ColourPattern.VERTICAL, RED, WHITE));
    all.put("usa CR", board(Board.of(BoardShape.DIAMOND, RED), ColourPattern.SQUARED, RED, WHITE));
    all.put(
        "usa CG", board(Board.of(BoardShape.DIAMOND, GREEN), ColourPattern.SQUARED, GREEN, WHITE));
    all.put("usa NW", board(Board.of(BoardShape.DIAMOND, ORANGE), ColourPattern.PLAIN, WHITE));
    all.put("usa NY", board(Board.of(BoardShape.DIAMOND, YELLOW), ColourPattern.PLAIN, YELLOW));
    all.put(
        "usa KRW",
        board(Board.of(BoardShape.RECTANGLE, RED), ColourPattern.VERTICAL, RED, WHITE, RED));
    all.put(
        "diagonal",
        board(Board.of(BoardShape.SQUARE, BLACK), ColourPattern.DIAGONAL, BLACK, YELLOW));
    all.put("squared", board(Board.of(BoardShape.SQUARE, RED), ColourPattern.SQUARED, RED, WHITE));
    all.put("icw square labelled", intracoastal(triangle, RED, Symbol.YELLOW_SQUARE));
    all.put("icw triangle labelled", intracoastal(square, GREEN, Symbol.YELLOW_TRIANGLE));
    all.put("icw band labelled", intracoastal(square, GREEN, Symbol.YELLOW_BAND));
    all.put("icw band triangle labelled", intracoastal(triangle, RED, Symbol.YELLOW_BAND));
    all.put(
        "canada port-hand",
        board(new Board(BoardShape.SQUARE, GREEN, WHITE, null), ColourPattern.PLAIN, GREEN));
    all.put(
        "canada starboard",
        board(new Board(BoardShape.TRIANGLE, RED, WHITE, null), ColourPattern.PLAIN, RED));
    all.put("canada front", leading(Taper.UP));
    all.put("canada rear", leading(Taper.DOWN));
    return all;
  }

  static Appearance board(Board board, ColourPattern pattern, Colour... colours) {
    return new Appearance(
        BodyShape.DAYBOARD, pattern, List.of(colours), null, board, null, null, null);
  }

  private static Appearance intracoastal(Board board, Colour colour, Symbol symbol) {
    return new Appearance(
        BodyShape.DAYBOARD, ColourPattern.PLAIN, List.of(colour), symbol, board, null, null, null);
  }

  static Appearance leading(Taper taper) {
    return new Appearance(
        BodyShape.DAYBOARD,
        ColourPattern.VERTICAL,
        List.of(BLACK, RED, WHITE),
        null,
        new Board(BoardShape.RECTANGLE, BLACK, null, taper),
        Structure.LATTICE,
        null,
        LightCharacter.parse("Q R"));
  }

  static Map<String, Appearance> structures() {
    Map<String, Appearance> all = new LinkedHashMap<>();
    for (Structure each : Structure.values()) {
      BodyShape body = each.ordinal() < 3 ? BodyShape.BEACON : BodyShape.SPAR;
      all.put(each.id() + " red", built(body, each, ColourPattern.PLAIN, RED));
      all.put(each.id() + " green", built(body, each, ColourPattern.PLAIN, GREEN));
    }
    for (Structure each : List.of(Structure.TOWER, Structure.LATTICE, Structure.PILE)) {
      all.put(
          each.id() + " east",
          new Appearance(
              BodyShape.BEACON,
              ColourPattern.HORIZONTAL,
              List.of(BLACK, YELLOW, BLACK),
              null,
              null,
              each,
              Topmark.of(TopmarkShape.TWO_CONES_BASE_TO_BASE, BLACK),
              LightCharacter.parse("Q(3) W 10s")));
      all.put(
          each.id() + " board",
          new Appearance(
              BodyShape.DAYBOARD,
              ColourPattern.PLAIN,
              List.of(GREEN),
              null,
              Board.of(BoardShape.SQUARE, GREEN),
              each,
              null,
              LightCharacter.parse("Fl G 4s")));
    }
    all.put(
        "beacon danger",
        new Appearance(
            BodyShape.BEACON,
            ColourPattern.HORIZONTAL,
            List.of(BLACK, RED, BLACK),
            Topmark.of(TopmarkShape.TWO_SPHERES, BLACK),
            null));
    all.put(
        "tower stripes",
        new Appearance(
            BodyShape.BEACON,
            ColourPattern.VERTICAL,
            List.of(RED, WHITE),
            null,
            null,
            Structure.TOWER,
            Topmark.of(TopmarkShape.SPHERE, RED),
            null));
    return all;
  }

  private static Appearance built(
      BodyShape body, Structure structure, ColourPattern pattern, Colour... colours) {
    return new Appearance(body, pattern, List.of(colours), null, null, structure, null, null);
  }
}
