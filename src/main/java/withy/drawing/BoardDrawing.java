package withy.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import withy.core.mark.Appearance;
import withy.core.mark.Board;
import withy.core.mark.BoardShape;
import withy.core.mark.Colour;
import withy.core.mark.ColourPattern;
import withy.core.mark.Symbol;

/** The board of a daybeacon: its edge, its ground or panel, its letters. */
final class BoardDrawing {
  static final double BORDER = 5.5;
  private static final double PANEL = 0.56;
  private static final double OUTLINE = 1.8;
  private static final double PLATE = 15;

  private final Appearance appearance;
  private final Board board;
  private final Polygon outline;
  private final Polygon inside;

  /** A board whose lower edge or corner stands at a height. */
  BoardDrawing(Appearance appearance, double foot) {
    this.appearance = appearance;
    Board given = appearance.board();
    this.board = given == null ? Board.of(BoardShape.SQUARE, appearance.colours().get(0)) : given;
    Polygon shape = BoardOutline.of(board, appearance.pattern());
    this.outline = shape.moved(0, foot - shape.bottom());
    this.inside = outline.inset(BORDER);
  }

  double top() {
    return outline.top();
  }

  Polygon outline() {
    return outline;
  }

  void silhouette(SvgWriter svg) {
    svg.element("path", "d", outline.path(), "fill", Palette.SILHOUETTE);
  }

  void paint(SvgWriter svg, @Nullable String label) {
    svg.element("path", "d", outline.path(), "fill", Palette.of(board.border()));
    Colour ground = board.ground();
    if (ground != null) {
      fill(svg, inside, ground);
    }
    Polygon field = field();
    ColourFields.of(field, appearance.pattern(), appearance.colours(), quartered())
        .forEach(each -> fill(svg, each.shape(), each.colour()));
    part(svg, field);
    seam(svg);
    Pen.line(svg, outline.path(), Palette.INK, OUTLINE);
    if (appearance.symbol() != null) {
      symbol(svg, appearance.symbol(), field, label != null);
    }
    if (label != null) {
      letter(svg, label, field);
    }
  }

  /** The same thin light line between red and green as on round bodies. */
  private void part(SvgWriter svg, Polygon field) {
    List<Colour> colours = appearance.colours();
    double band = (field.bottom() - field.top()) / colours.size();
    for (int i = 1; i < colours.size(); i++) {
      boolean level = appearance.pattern() == ColourPattern.HORIZONTAL;
      if (level && Coat.alike(colours.get(i - 1), colours.get(i))) {
        double y = field.top() + i * band;
        fill(svg, field.between(Vec.DOWN, y - 0.7, y + 0.7), Colour.WHITE);
      }
    }
  }

  private boolean quartered() {
    return board.shape() == BoardShape.DIAMOND;
  }

  private Polygon field() {
    return board.ground() == null ? inside : inside.shrunk(PANEL);
  }

  private void fill(SvgWriter svg, Polygon shape, Colour colour) {
    svg.element("path", "d", shape.path(), "fill", Palette.of(colour));
  }

  /** The inner edge of the border: faint where it has the colour of what lies inside. */
  private void seam(SvgWriter svg) {
    Colour next = board.ground() == null ? appearance.colours().get(0) : board.ground();
    Palette ink = board.border() == next && next != Colour.WHITE ? Palette.WHITE : Palette.INK;
    svg.element(
        "path",
        "d",
        inside.path(),
        "fill",
        "none",
        "stroke",
        ink,
        "stroke-width",
        1,
        "stroke-opacity",
        0.55);
  }

  private void symbol(SvgWriter svg, Symbol symbol, Polygon field, boolean labelled) {
    double height = field.bottom() - field.top();
    if (symbol == Symbol.YELLOW_BAND) {
      double middle = letters(field) - (labelled ? letterSize(field) * 0.5 + 8 : 0);
      Polygon band = field.between(Vec.DOWN, middle - 4, middle + 4);
      Pen.area(svg, band.path(), Palette.YELLOW, Palette.INK, 0.9);
      return;
    }
    boolean small = symbol.isIntracoastal();
    double share = small ? (board.shape() == BoardShape.TRIANGLE ? 0.38 : 0.22) : 0.5;
    double size = small ? 13 : Math.min(34, height * 0.62);
    SymbolDrawing.draw(svg, symbol, new Vec(0, field.top() + height * share), size, size);
  }

  private double letters(Polygon field) {
    double lift = board.shape() == BoardShape.TRIANGLE ? 0.7 : 0.5;
    double drop = small() ? 0.14 : 0;
    return field.top() + (field.bottom() - field.top()) * (lift + drop);
  }

  private boolean small() {
    Symbol symbol = appearance.symbol();
    return symbol != null && symbol.isIntracoastal();
  }

  private double letterSize(Polygon field) {
    return Math.min(24, (field.bottom() - field.top()) * (small() ? 0.36 : 0.52));
  }

  private void letter(SvgWriter svg, String label, Polygon field) {
    if (appearance.pattern() == ColourPattern.PLAIN
        || appearance.pattern() == ColourPattern.HORIZONTAL) {
      double y = letters(field);
      double size = letterSize(field);
      double room = field.widthAt(y) * 0.9;
      write(svg, label, y, Math.min(size, room / (0.6 * label.length())), ground(y, field));
    } else {
      plate(svg, label);
    }
  }

  private Colour ground(double y, Polygon field) {
    List<Colour> colours = appearance.colours();
    double share = (y - field.top()) / (field.bottom() - field.top());
    return colours.get((int) Math.min(colours.size() - 1.0, share * colours.size()));
  }

  /** A board of many fields has its number on a plate below. */
  private void plate(SvgWriter svg, String label) {
    double half = Math.max(12, label.length() * 5 + 4);
    double top = outline.bottom() + 2;
    Pen.area(
        svg, Polygon.box(-half, top, half, top + PLATE).path(), Palette.WHITE, Palette.INK, 1.2);
    write(svg, label, top + PLATE / 2, 12, Colour.WHITE);
  }

  private void write(SvgWriter svg, String label, double y, double size, Colour ground) {
    Pen.bold(svg, label, new Vec(0, y), size, Palette.lettering(ground));
  }
}
