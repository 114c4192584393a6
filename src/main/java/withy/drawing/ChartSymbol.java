package withy.drawing;

import java.util.List;
import withy.core.mark.Appearance;
import withy.core.mark.Board;
import withy.core.mark.BodyShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.Structure;
import withy.core.mark.Topmark;

/**
 * A mark as charts show it: its shape in its colours over the small circle of its place, topmark
 * and flare of its light. The place is at nought, heights above it are negative.
 */
final class ChartSymbol {
  private static final double PLACE = 1.8;
  private static final double FLARE = 14;

  private final Appearance appearance;

  ChartSymbol(Appearance appearance) {
    this.appearance = appearance;
  }

  /** The room it takes. */
  Box box() {
    Topmark topmark = appearance.topmark();
    Polygon body = body();
    double top = topmark == null ? body.top() : ChartTopmark.top(topmark, body.top());
    double half = Math.max(4.2, Math.max(body.farthest(Vec.RIGHT), -body.nearest(Vec.RIGHT)));
    boolean lit = appearance.light() != null;
    double right = lit ? Math.max(half, FLARE * 0.8) : half;
    return new Box(-half - 0.5, top - 0.5, right + 0.5, lit ? FLARE * 0.62 : PLACE + 0.5);
  }

  void draw(SvgWriter svg, Vec at, Palette flare) {
    String place = SvgWriter.decimal(at.x(), 10) + " " + SvgWriter.decimal(at.y(), 10);
    svg.begin("g", "transform", "translate(" + place + ")");
    if (appearance.light() != null) {
      Pen.area(svg, flare(), flare, flare, 0.3);
    }
    Polygon body = body();
    foot(svg);
    paint(svg, body);
    Pen.line(svg, body.path(), Palette.INK, 0.8);
    Topmark topmark = appearance.topmark();
    if (topmark != null) {
      ChartTopmark.draw(svg, topmark, body.top());
    }
    svg.element(
        "circle", "r", PLACE, "fill", Palette.WHITE, "stroke", Palette.INK, "stroke-width", 0.9);
    svg.end();
  }

  /** Its place alone, as it is known in the dark. */
  void place(SvgWriter svg, Vec at, ChartInk ink) {
    Pen.circle(svg, at, PLACE, ink.paper(), ink.faint(), 0.9);
  }

  /** A drop that runs out from the place to the south-east. */
  private static PathData flare() {
    double x = FLARE * 0.76;
    double y = FLARE * 0.55;
    return PathData.at(1, 0.8)
        .cubic(x * 0.7, y * 0.1, x * 1.15, y * 0.75, x * 0.98, y * 1.02)
        .cubic(x * 0.8, y * 1.25, x * 0.3, y * 0.95, 1, 0.8)
        .close();
  }

  /** What stands on the ground stands on a pole and a short line. */
  private void foot(SvgWriter svg) {
    boolean fixed = appearance.body() == BodyShape.BEACON || isBoard();
    if (fixed) {
      double top = body().bottom();
      Pen.line(svg, PathData.line(-4, 0, 4, 0).move(0, 0).line(0, top), Palette.INK, 1.2);
    }
  }

  private boolean isBoard() {
    return appearance.body() == BodyShape.DAYBOARD;
  }

  private void paint(SvgWriter svg, Polygon body) {
    Board board = appearance.board();
    Polygon painted = body;
    if (board != null) {
      Colour ground = board.ground();
      fill(svg, body, Palette.of(board.border()));
      painted = body.shrunk(0.78);
      if (ground != null) {
        fill(svg, painted, Palette.of(ground));
        painted = body.shrunk(0.45);
      }
    }
    for (ColourFields.Field each : fields(painted)) {
      fill(svg, each.shape(), Palette.of(each.colour()));
    }
  }

  private List<ColourFields.Field> fields(Polygon painted) {
    ColourPattern pattern = appearance.pattern();
    List<Colour> colours = appearance.colours();
    boolean striped = pattern == ColourPattern.VERTICAL && !isBoard() && colours.size() == 2;
    List<Colour> shown = striped && !colours.contains(Colour.BLUE) ? stripes(colours) : colours;
    return ColourFields.of(painted, pattern, shown, true);
  }

  /** Three stripes are as many as can be told apart so small. */
  private static List<Colour> stripes(List<Colour> two) {
    return List.of(two.get(0), two.get(1), two.get(0));
  }

  private static void fill(SvgWriter svg, Polygon shape, Palette colour) {
    svg.element("path", "d", shape.path(), "fill", colour);
  }

  private Polygon body() {
    Structure structure = appearance.structure();
    Board board = appearance.board();
    return switch (appearance.body()) {
      case CAN -> Polygon.box(-4.4, -11.8, 4.4, -PLACE);
      case CONICAL -> Polygon.of(0, -13, 5.4, -PLACE, -5.4, -PLACE);
      case SPHERICAL -> ChartTopmark.ball(-PLACE + 0.6, 5);
      case PILLAR -> Polygon.of(-1.9, -15, 1.9, -15, 3.9, -PLACE, -3.9, -PLACE);
      case SPAR -> Polygon.of(-1.3, -16.5, 1.3, -16.5, 1.6, -PLACE, -1.6, -PLACE);
      case BARREL -> Polygon.box(-5.6, -8, 5.6, -PLACE);
      case BEACON ->
          structure == null || structure.ordinal() >= Structure.PILE.ordinal()
              ? Polygon.box(-1.7, -15, 1.7, -3.5)
              : Polygon.of(-2.2, -15, 2.2, -15, 4, -2.4, -4, -2.4);
      case DAYBOARD -> board == null ? Polygon.box(-4, -14, 4, -6) : board(board);
    };
  }

  private Polygon board(Board board) {
    List<Vec> corners =
        BoardOutline.of(board, appearance.pattern()).corners().stream()
            .map(each -> each.times(0.135))
            .toList();
    Polygon small = new Polygon(corners);
    return small.moved(0, -6.5 - small.bottom());
  }
}
